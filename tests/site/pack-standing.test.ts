import { describe, expect, test } from 'vitest';
import { aircraftStanding, newestFirst, packCountedFrom, packStanding } from '../../site/browser/shop/pack-standing.ts';
import type { Pack } from '../../worker/client/client.ts';

/** A pack sealed on a day of November 2026. */
function pack(number: number, issue: number, day: number, more: Partial<Pack> = {}): Pack {
  const digest = '0'.repeat(64);
  return {
    registration: 'Q-SLM',
    pack: `Q-SLM-P${number}-${issue}`,
    number,
    issue,
    visit: `v${number}`,
    issuedAt: `2026-11-${String(day).padStart(2, '0')}T13:20:00Z`,
    releasedBy: 'Jonas Veldt',
    regime: 'generic',
    emptyMassKg: null,
    emptyArmMm: null,
    supersedes: null,
    findings: { cautions: 0, notes: 0 },
    supersededBy: null,
    withdrawal: null,
    previous: null,
    manifestSha256: digest,
    pdfSha256: digest,
    recordSha256: digest,
    files: { pdf: '', record: '', manifest: '' },
    ...more,
  };
}

const withdrawnOn = (day: number) => ({
  withdrawal: { at: `2026-11-${day}T09:00:00Z`, by: 'Rufus Tallant', reason: 'Wrong meter read' },
});

/** Dates are joined by no-break spaces. */
const plain = (words: string): string => words.replaceAll('\u00a0', ' ');

/** What is said of each, the newest first. */
const said = (...packs: Pack[]): string[] =>
  newestFirst(packs).map((one) => plain(packStanding(one, newestFirst(packs)).words));

describe('packStanding()', () => {
  test('one pack stands', () => {
    expect(said(pack(1, 1, 5))).toEqual(['released 5 Nov 2026 by Jonas Veldt']);
  });

  test('a later issue and a later pack both supersede, and are named', () => {
    const first = pack(1, 1, 5, { supersededBy: 'Q-SLM-P1-2' });
    expect(said(first, pack(1, 2, 6), pack(2, 1, 9))).toEqual([
      'released 9 Nov 2026 by Jonas Veldt',
      'superseded by the later pack Q-SLM-P2-1',
      'superseded by issue Q-SLM-P1-2',
    ]);
  });

  test('nobody is sent to a withdrawn pack as if it stood', () => {
    const packs = [pack(1, 1, 5), pack(2, 1, 9, withdrawnOn(10))];
    expect(said(...packs)).toEqual([
      'withdrawn 10 Nov 2026 by Rufus Tallant: Wrong meter read',
      'superseded by the later pack Q-SLM-P2-1, which was withdrawn: no current release',
    ]);
    const [first] = said(pack(1, 1, 5, { supersededBy: 'Q-SLM-P1-2' }), pack(1, 2, 6, withdrawnOn(10))).slice(1);
    expect(first).toBe('superseded by issue Q-SLM-P1-2, which was withdrawn');
  });

  test('a withdrawn pack that was issued anew says by which issue', () => {
    const first = pack(1, 1, 5, { ...withdrawnOn(10), supersededBy: 'Q-SLM-P1-2' });
    expect(said(first, pack(1, 2, 11))[1]).toMatch(/^withdrawn .*: Wrong meter read\. Superseded by issue Q-SLM-P1-2$/);
  });

  test('figures that were corrected or withdrawn after they were carried forward no longer stand', () => {
    const corrected = [pack(1, 1, 5, { supersededBy: 'Q-SLM-P1-2' }), pack(2, 1, 9), pack(1, 2, 11)];
    expect(said(...corrected)[0]).toContain('calculated from figures that Q-SLM-P1-2 corrected since');
    const withdrawn = [pack(1, 1, 5, withdrawnOn(10)), pack(2, 1, 9)];
    expect(said(...withdrawn)[0]).toContain('calculated from Q-SLM-P1-1, which was withdrawn since');
    // What was corrected before the later pack was sealed is in it.
    const before = [pack(1, 1, 5, { supersededBy: 'Q-SLM-P1-2' }), pack(1, 2, 6), pack(2, 1, 9)];
    expect(packStanding(pack(2, 1, 9), newestFirst(before)).kind).toBe('stands');
  });
});

describe('aircraftStanding()', () => {
  test('says that no release stands once the newest is withdrawn, whatever was before', () => {
    const packs = newestFirst([pack(1, 1, 5), pack(2, 1, 9, withdrawnOn(10))]);
    const { words, isGood } = aircraftStanding(packs);
    expect(plain(words)).toBe(
      'No current release: Q-SLM-P2-1 was withdrawn 10 Nov 2026 by Rufus Tallant: Wrong meter read',
    );
    expect(isGood).toBe(false);
    expect(packCountedFrom(packs)?.pack).toBe('Q-SLM-P1-1');
  });

  test('is good for a pack that stands alone', () => {
    const { words, isGood } = aircraftStanding([pack(1, 1, 5)]);
    expect(plain(words)).toBe('Q-SLM-P1-1, released 5 Nov 2026 by Jonas Veldt');
    expect(isGood).toBe(true);
    const corrected = newestFirst([pack(1, 1, 5, withdrawnOn(10)), pack(2, 1, 9)]);
    expect(aircraftStanding(corrected).isGood).toBe(false);
    expect(aircraftStanding([]).isGood).toBe(false);
  });
});

describe('packCountedFrom()', () => {
  test('takes no issue that was replaced, and a withdrawn pack only where there is no other', () => {
    const issues = newestFirst([pack(1, 1, 5, { supersededBy: 'Q-SLM-P1-2' }), pack(1, 2, 6, withdrawnOn(10))]);
    expect(packCountedFrom(issues)?.pack).toBe('Q-SLM-P1-2');
    expect(packCountedFrom([])).toBeUndefined();
  });
});
