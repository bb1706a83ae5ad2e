import { describe, expect, test } from 'vitest';
import { flownUntil, type NextDue } from '../../../worker/core/pack/next-due.ts';
import { recordFormatter } from '../../../worker/core/record/record-formatter.ts';
import { readVisit } from '../calc/read-visit.ts';

const visit = readVisit('nose-wheel-full');
const fmt = recordFormatter(visit);

const due = (more: Partial<NextDue>): NextDue => ({
  ...{
    id: 'A',
    kind: 'due' as const,
    what: 'A',
    limit: '',
    date: undefined,
    hours: undefined,
    hoursLeft: undefined,
    meter: undefined,
  },
  ...{ landings: undefined, of: 'airframe', isOverdue: false },
  ...more,
});

const until = (...items: Partial<NextDue>[]) => flownUntil(items.map(due), { visit, fmt })?.replaceAll('\u00a0', ' ');

// Common practice, no source: whichever comes first, on every clock.
describe('flownUntil()', () => {
  test('is the earliest on every clock, of whatever is due', () => {
    expect(
      until(
        { date: '2027-02-24', hours: 1230, hoursLeft: 8 },
        { hours: 1224.9, hoursLeft: 2.9 },
        { date: '2027-01-31', landings: 2400 },
        { landings: 2390 },
      ),
    ).toBe('31 Jan 2027 or 1224.9 h, airframe or 2390 landings');
  });

  test('names every meter that may come first, and none that cannot', () => {
    const airframe = { hours: 1230, hoursLeft: 25 };
    const engine = { of: 'engine', meter: 'engine' } as const;
    expect(until(airframe, { ...engine, hours: 1254.2, hoursLeft: 49.9 })).toBe(
      '1230.0 h, airframe or 1254.2 h, engine',
    );
    expect(until(airframe, { ...engine, hours: 1255, hoursLeft: 50.5 })).toBe('1230.0 h, airframe');
    // Of a meter that was not read nobody knows what is left.
    expect(until(airframe, { ...engine, hours: 1400 })).toBe('1230.0 h, airframe or 1400.0 h, engine');
  });

  test('has the fewest of what each counter counts', () => {
    const pack = (id: string, cycles: number) => ({
      cycles,
      counters: [{ counts: 'cycles' as const, id, of: 'battery' as const }],
    });
    expect(until(pack('pack-a', 700), pack('pack-b', 650), pack('pack-a', 690), { launches: 3066 })).toBe(
      '690 cycles, battery (pack-a) or 650 cycles, battery (pack-b) or 3066 launches',
    );
  });

  test('leaves out what has expired of an item that waits for all of its clocks', () => {
    const all = { date: '2025-03-12', hours: 1230, hoursLeft: 25, dueAfter: 'all' as const };
    expect(until({ ...all, left: { daysLeft: -600 } })).toBe('1230.0 h, airframe');
    expect(until({ ...all, left: { daysLeft: 10 } })).toBe('12 Mar 2025 or 1230.0 h, airframe');
  });

  test('is not known where nothing has a limit', () => expect(until({}, {})).toBeUndefined());
});
