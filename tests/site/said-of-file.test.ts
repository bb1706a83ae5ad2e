import { describe, expect, test } from 'vitest';
import { saidOfFile } from '../../site/browser/verify/said-of-file.ts';
import type { Verification } from '../../worker/client/client.ts';
import type { Verdict } from '../../worker/core/seal/verify.ts';

const KID = 'thumbprint-of-the-key';

const PROVED = { kind: 'genuine', kid: KID, claims: { workshop: 'meadow', pack: 'Q-TST-P1-1' } } as Verdict;

const known = (more: Partial<Verification>): Verification => ({
  verdict: 'superseded',
  pack: 'Q-TST-P1-1',
  workshop: 'meadow',
  workshopName: 'Lower Meadow',
  releasedBy: 'Jonas Veldt',
  issuedAt: '2026-11-05T12:00:00Z',
  ...more,
});

describe('saidOfFile()', () => {
  test.each<[string, Partial<Verification>, RegExp]>([
    ['Genuine', { verdict: 'genuine' }, /nothing replaces it/],
    ['Genuine, but superseded', { supersededBy: 'Q-TST-P3-1' }, /Q-TST-P3-1 replaces it/],
    [
      'Genuine, but there is no current release',
      { laterWithdrawn: 'Q-TST-P2-1' },
      /Q-TST-P2-1 was withdrawn.* do not fly/,
    ],
    ['Genuine, from figures that were corrected', { corrected: ['Q-TST-P0-2'] }, /corrected .*Q-TST-P0-2/],
    [
      'Withdrawn',
      { verdict: 'withdrawn', withdrawal: { at: '', by: 'Jonas', reason: 'Wrong scale.' } },
      /Jonas withdrew.*: Wrong scale\. Do not fly/,
    ],
  ])('%s: says so, who sealed it and with which key', (headline, more, line) => {
    const said = saidOfFile(known(more), PROVED);
    expect(said.headline).toBe(headline);
    const text = said.lines.join(' ');
    expect(text).toMatch(line);
    expect(text).toContain('Sealed by Lower Meadow (meadow)');
    expect(text).toContain(KID);
    expect(said.state).toBe(headline === 'Genuine' ? 'good' : 'bad');
    // Nobody is sent to a pack that was withdrawn.
    if ('laterWithdrawn' in more) expect(text).not.toMatch(/ask the workshop for that|use that/);
  });

  test('believes no archive without the seal, nor a seal of another workshop', () => {
    const others: (Verdict | undefined)[] = [
      undefined,
      { kind: 'not-sealed' },
      { kind: 'key-unknown', kid: KID },
      { kind: 'genuine', kid: KID, claims: { workshop: 'other' } } as Verdict,
    ];
    for (const own of others) expect(saidOfFile(known({ verdict: 'genuine' }), own).headline).toBe('Not proved');
  });
});
