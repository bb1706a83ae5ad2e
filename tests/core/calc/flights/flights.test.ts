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
  const isOpen = (first: Flight, later: Flight[] = [], release = VISIT.release): boolean =>
    isUnresolved(first, { ...VISIT, release, flights: [first, ...later] });

  test('until a later satisfactory flight names all that it names', () => {
    expect(isOpen(bad)).toBe(true);
    expect(isOpen(bad, [FLOWN])).toBe(false);
    expect(isOpen(bad, [flight({ for: [] })])).toBe(true);
    expect(isOpen(bad, [flight({ from: '2026-10-14T12:00:00-05:00' })])).toBe(true);
    expect(isOpen({ ...bad, openItems: ['Q-HVR-P1/M4'] }, [FLOWN])).toBe(true);
  });

  test('any later one resolves a flight that names nothing', () => {
    expect([isOpen({ ...bad, for: [] }, [FLOWN]), isOpen({ ...bad, for: [] })]).toEqual([false, true]);
  });

  test('unless the release permits the flight test, or it was flown before the arrival', () => {
    if (!VISIT.release) throw new Error('the helicopter has a release');
    const after = { modification: 'M1', flownBy: 'Ines Dahl, alone', limitation: 'In the circuit only' };
    expect(isOpen(bad, [], { ...VISIT.release, flightTestsAfterRelease: [after] })).toBe(false);
    expect(isOpen({ ...bad, from: '2026-10-12T12:00:00-05:00' })).toBe(false);
  });
});
