import { describe, expect, test } from 'vitest';
import { formatterFor } from '../../../worker/core/text/formatter.ts';
import { ENGLISH } from '../../../worker/core/text/locale.ts';
import type { KeptPack } from '../../../worker/edge/archive/ledger/ledger-calls.ts';
import { standingOf } from '../../../worker/edge/http/owner-standing.ts';

const fmt = formatterFor({ mass: 'kg', arm: 'mm', volume: 'l' }, ENGLISH, '+01:00');

const pack = (name: string, issuedAt: string): KeptPack =>
  ({ withdrawal: null, summary: { pack: name, issuedAt, supersedes: null } }) as unknown as KeptPack;

const FIRST = pack('Q-SLM-P1-1', '2026-11-05T13:20:00Z');
const LATER = pack('Q-SLM-P2-1', '2026-11-20T12:00:00Z');
const CORRECTION = pack('Q-SLM-P1-2', '2026-11-25T12:00:00Z');

describe('standingOf()', () => {
  test('sends the reader of a pack that a later one replaced to that', () => {
    const { isCurrent, detail } = standingOf({ pack: FIRST, later: LATER, corrected: [] }, fmt);
    expect([isCurrent, detail]).toEqual([
      false,
      expect.stringContaining('ask the workshop for the link to Q-SLM-P2-1'),
    ]);
  });

  test('sends nobody from a correction to the later pack that does not know of it, nor back', () => {
    const ofCorrection = standingOf({ pack: CORRECTION, later: LATER, corrected: [] }, fmt);
    expect(ofCorrection).toMatchObject({ isCurrent: false, headline: 'A later release must be corrected too' });
    expect(ofCorrection.detail).toContain('ask the workshop to issue Q-SLM-P2-1 anew');
    const ofLater = standingOf({ pack: LATER, later: null, corrected: [CORRECTION] }, fmt);
    expect(ofLater.isCurrent).toBe(false);
    expect(ofLater.detail).toContain('by Q-SLM-P1-2. Do not load the aircraft by the figures of this pack');
  });
});
