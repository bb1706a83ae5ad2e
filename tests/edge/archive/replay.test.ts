import { describe, expect, test } from 'vitest';
import { entryAfter, GENESIS } from '../../../worker/edge/archive/ledger/chain.ts';
import type { ChainEntry } from '../../../worker/edge/archive/ledger/ledger-calls.ts';
import { replay } from '../../../worker/edge/archive/ledger/replay.ts';

const AT = '2026-11-10T12:00:00.000Z';
const SHA = 'a'.repeat(64);
const DIGESTS = { manifestSha256: SHA, pdfSha256: SHA, recordSha256: SHA, documentsSha256: SHA };

type Happening = [kind: ChainEntry['kind'], body: Record<string, string | number>, at?: string];

const kept = (visit: string, version: number): Happening => ['visit-kept', { visit, version, recordSha256: SHA }];
const sealed = (pack: string, visit: string, version: number): Happening => [
  'pack-sealed',
  { pack, visit, version, ...DIGESTS },
];
const withdrawn = (pack: string): Happening => ['pack-withdrawn', { pack, by: 'Rufus', reason: 'the wrong scale' }];

/** A chain whose digests hold, whatever it says. */
async function chainOf(happenings: readonly Happening[]): Promise<ChainEntry[]> {
  const entries: ChainEntry[] = [];
  for (const [kind, body, at = AT] of happenings) {
    const { seq, digest } = entries.at(-1) ?? { seq: 0, digest: GENESIS };
    entries.push(await entryAfter({ seq, digest }, { at, kind, body }));
  }
  return entries;
}

describe('replay()', () => {
  test('comes to the numbers, issues and standings that the ledger came to', async () => {
    const entries = await chainOf([
      kept('a', 1),
      sealed('Q-TST-P1-1', 'a', 1),
      kept('b', 1),
      sealed('Q-TST-P2-1', 'b', 1),
      kept('a', 2),
      sealed('Q-TST-P1-2', 'a', 2),
      withdrawn('Q-TST-P2-1'),
      kept('a', 3),
    ]);
    const outcome = await replay('Q-TST', entries);
    if (!outcome.ok) throw new Error(outcome.fault.why);
    const { packs, visits } = outcome.replay;
    expect([...packs.values()]).toMatchObject([
      { pack: 'Q-TST-P1-1', previous: null, supersedes: null, supersededBy: 'Q-TST-P1-2' },
      { pack: 'Q-TST-P2-1', previous: 'Q-TST-P1-1', supersededBy: null, withdrawal: { by: 'Rufus', at: AT } },
      { pack: 'Q-TST-P1-2', number: 1, issue: 2, previous: 'Q-TST-P2-1', supersedes: 'Q-TST-P1-1' },
    ]);
    expect(visits.get('a')).toMatchObject({ version: 3, state: 'working', pack: 'Q-TST-P1-2' });
    expect(visits.get('b')).toMatchObject({ version: 1, state: 'released', pack: 'Q-TST-P2-1' });
  });

  const first = [kept('a', 1), sealed('Q-TST-P1-1', 'a', 1)];
  test.each<[string, Happening]>([
    ['a form that was left out', kept('a', 3)],
    ['a second pack over the same form', sealed('Q-TST-P1-2', 'a', 1)],
    ['a pack of a visit that nobody kept', sealed('Q-TST-P2-1', 'b', 1)],
    ['the withdrawal of a pack that nobody sealed', withdrawn('Q-TST-P2-1')],
    ['a link to a pack that nobody sealed', ['link-made', { link: 'x', number: 2, audience: 'owner', expiresAt: AT }]],
    ['the end of a link that nobody made', ['link-revoked', { link: 'x' }]],
    ['a body with more in it', ['visit-kept', { visit: 'b', version: 1, recordSha256: SHA, more: 1 }]],
    ['a visit named like a way through folders', kept('../b', 1)],
    ['a moment that is none', ['visit-kept', { visit: 'b', version: 1, recordSha256: SHA }, 'yesterday']],
  ])('refuses %s, though every digest holds', async (_, happening) => {
    const outcome = await replay('Q-TST', await chainOf([...first, happening]));
    expect(outcome).toMatchObject({ ok: false, fault: { seq: 3 } });
  });

  test.each(['Q-TST-P1-2', 'Q-TST-P2-1', 'Q-OTH-P1-1'])('refuses the name %s for a first pack', async (pack) => {
    const outcome = await replay('Q-TST', await chainOf([kept('a', 1), sealed(pack, 'a', 1)]));
    expect(outcome).toMatchObject({ ok: false, fault: { seq: 2 } });
  });

  test('refuses to withdraw twice', async () => {
    const entries = await chainOf([...first, withdrawn('Q-TST-P1-1'), withdrawn('Q-TST-P1-1')]);
    expect(await replay('Q-TST', entries)).toMatchObject({ ok: false, fault: { seq: 4 } });
  });

  test('refuses a body that is not written as it is digested', async () => {
    const entries = await chainOf(first);
    const [entry] = entries;
    const spaced = { ...entry, body: ` ${entry?.body}` } as ChainEntry;
    expect(await replay('Q-TST', [spaced, ...entries.slice(1)])).toMatchObject({ ok: false, fault: { seq: 1 } });
  });
});
