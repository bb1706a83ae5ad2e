import { describe, expect, test } from 'vitest';
import { flightTestOf, flownInVisit, isUnresolved } from '../../../../worker/core/calc/flights/flights.ts';
import type { Flight } from '../../../../worker/core/record/visit.ts';
import { readVisit } from '../read-visit.ts';

const VISIT = readVisit('helicopter');
const [FLOWN] = VISIT.flights ?? [];
if (!FLOWN) throw new Error('the helicopter was flown');
const flight = (change: Partial<Flight>): Flight => ({ ...FLOWN, ...change });
const M1 = { id: 'M1', finishedAt: '2026-10-13T16:00:00-05:00' };

describe('flightTestOf()', () => {
  test('is a satisfactory flight after the work that names the modification', () => {
    expect(flightTestOf(VISIT, M1)?.id).toBe('V1');
    // In hours of another zone.
    expect(flightTestOf({ flights: [flight({ from: '2026-10-13T21:00:00Z' })] }, M1)?.id).toBe('V1');
  });

  test('is no other flight', () => {
    for (const change of [
      { from: '2026-10-13T20:59:59Z' },
      { result: 'unsatisfactory' as const },
      { for: ['M2'] },
      { for: [] },
    ])
      expect(flightTestOf({ flights: [flight(change)] }, M1)).toBeUndefined();
    expect(flightTestOf({}, M1)).toBeUndefined();
  });
});

test('flownInVisit() counts what was flown since the arrival', () => {
  const before = flight({ id: 'V0', from: '2026-10-01T10:00:00-05:00', minutes: 50 });
  const later = flight({ id: 'V2', minutes: 6, landings: 1 });
  expect(flownInVisit({ ...VISIT, flights: [before, FLOWN, later] })).toEqual({ minutes: 20, landings: 3 });
  expect(flownInVisit({ visit: VISIT.visit })).toEqual({ minutes: 0, landings: 0 });
});

describe('isUnresolved()', () => {
  const bad = flight({ id: 'V0', result: 'unsatisfactory', from: '2026-10-14T12:30:00-05:00' });

  test('until a later satisfactory flight names all that it names', () => {
    expect(isUnresolved(bad, [bad])).toBe(true);
    expect(isUnresolved(bad, [bad, FLOWN])).toBe(false);
    expect(isUnresolved(bad, [bad, flight({ for: [] })])).toBe(true);
    expect(isUnresolved(bad, [bad, flight({ from: '2026-10-14T12:00:00-05:00' })])).toBe(true);
    expect(isUnresolved({ ...bad, openItems: ['Q-HVR-P1/M4'] }, [bad, FLOWN])).toBe(true);
  });

  test('any later one resolves a flight that names nothing', () => {
    const check = { ...bad, for: [] };
    expect(isUnresolved(check, [check, FLOWN])).toBe(false);
  });
});
