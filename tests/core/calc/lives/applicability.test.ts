import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { applicabilityOf, type Bulletin, isInSerialRange } from '../../../../worker/core/calc/lives/applicability.ts';
import { RUNS } from '../../../property-runs.ts';
import { readVisit } from '../read-visit.ts';

const VISIT = readVisit('nose-wheel-full');
const numbers = fc.nat(99_999);
const letters = fc.constantFrom('D2-', 'T4-', '', 'LM-12-', 'A');

describe('isInSerialRange()', () => {
  test('compares by number, whatever the leading zeros, letter case and spaces', () => {
    fc.assert(
      fc.property(letters, numbers, numbers, numbers, (prefix, a, b, own) => {
        const [from, to] = [Math.min(a, b), Math.max(a, b)];
        const range = { from: `${prefix}${from}`, to: `${prefix}${String(to).padStart(6, '0')}` };
        const written = `${prefix.toLowerCase()} ${String(own).padStart(7, '0')} `;
        expect(isInSerialRange(written, range)).toBe(own >= from && own <= to);
      }),
      RUNS,
    );
  });

  test('holds both of its ends', () => {
    const range = { from: 'D2-0050', to: 'D2-0140' };
    expect(['D2-0049', 'D2-0050', 'D2-0140', 'D2-0141'].map((serial) => isInSerialRange(serial, range))).toEqual([
      false,
      true,
      true,
      false,
    ]);
  });

  test('cannot tell other letters, no number, or a range that runs backwards', () => {
    expect(isInSerialRange('D3-0100', { from: 'D2-0050', to: 'D2-0140' })).toBeUndefined();
    expect(isInSerialRange('PROTOTYPE', { from: 'D2-0050', to: 'D2-0140' })).toBeUndefined();
    expect(isInSerialRange('D2-0100', { from: 'D2-0050', to: 'D3-0140' })).toBeUndefined();
    expect(isInSerialRange('D2-0100', { from: 'D2-0140', to: 'D2-0050' })).toBeUndefined();
  });
});

describe('applicabilityOf()', () => {
  const judge = (
    applicability: Bulletin['applicability'],
    equipment: { partNumber?: string; serial?: string }[] = [],
  ) =>
    applicabilityOf(VISIT, equipment, {
      id: 'SB',
      issuer: 'Maker',
      subject: 'Subject',
      kind: 'mandatory',
      status: 'open',
      applicability,
    });

  test('an airframe without ranges always applies', () => {
    expect(judge({ product: 'airframe' })).toBe('applies');
  });

  test('one range of the same letters shows that the others are other series', () => {
    const series = [
      { from: 'D3-0001', to: 'D3-0900' },
      { from: 'D2-0001', to: 'D2-0100' },
    ];
    expect(judge({ product: 'airframe', serials: series })).toBe('does-not-apply');
    expect(judge({ product: 'airframe', serials: series.slice(0, 1) })).toBe('undecided');
  });

  test('equipment applies by part number, and is undecided without a serial number to compare', () => {
    const of = { product: 'equipment' as const, partNumbers: ['HT-21'], serials: [{ from: '20000', to: '21000' }] };
    expect(judge(of, [{ partNumber: 'HT-21', serial: '20551' }])).toBe('applies');
    expect(judge(of, [{ partNumber: 'HT-21', serial: '30551' }])).toBe('does-not-apply');
    expect(judge(of, [{ partNumber: 'HT-21' }])).toBe('undecided');
    expect(judge(of, [{ partNumber: 'HT-22', serial: '20551' }])).toBe('does-not-apply');
    expect(judge({ product: 'equipment' }, [{ partNumber: 'HT-21' }])).toBe('undecided');
  });
});
