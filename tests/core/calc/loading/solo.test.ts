import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type EnvelopeCorner, envelopeOf } from '../../../../worker/core/calc/loading/envelope.ts';
import { loadingOf } from '../../../../worker/core/calc/loading/loading-of.ts';
import { MIN_TRIED_KG, minimumSoloKg } from '../../../../worker/core/calc/loading/solo.ts';
import { judgeOf } from '../../../../worker/core/calc/loading/verdict.ts';
import type { Aircraft } from '../../../../worker/core/record/visit.ts';
import { RUNS } from '../../../property-runs.ts';
import { readVisit } from '../read-visit.ts';

const { aircraft: DEMO } = readVisit('nose-wheel-full');
/** Without what its papers ask of the pilot, so that the envelope alone decides. */
const TEMPLATE = {
  ...DEMO,
  stations: DEMO.stations.map((station) =>
    station.kind === 'pilot' ? { ...station, minimumMassKg: undefined } : station,
  ) as Aircraft['stations'],
};
const EMPTY = { massKg: 326, momentKgMm: 326 * 1650 };

const rectangle = (lowestKg: number, forwardMm: number, aftMm: number): EnvelopeCorner[] => [
  { armMm: forwardMm, massKg: lowestKg },
  { armMm: forwardMm, massKg: 600 },
  { armMm: aftMm, massKg: 600 },
  { armMm: aftMm, massKg: lowestKg },
];

function soloOf(corners: EnvelopeCorner[]): { aircraft: Aircraft; leastKg: number | undefined } {
  const aircraft = { ...TEMPLATE, envelope: corners };
  const envelope = envelopeOf(corners);
  return { aircraft, leastKg: envelope && minimumSoloKg(aircraft, { empty: EMPTY, leastPilotKg: 55 }, envelope) };
}

/** Whether a pilot alone is inside at each of many fuel contents. */
function isInsideAtAnyFuel(aircraft: Aircraft, corners: EnvelopeCorner[], pilotKg: number): boolean {
  const judge = judgeOf(aircraft, { envelope: envelopeOf(corners) });
  return Array.from({ length: 101 }, (_, percent) => (78 * 0.72 * percent) / 100).every((fuelKg) => {
    const loading = loadingOf(aircraft, EMPTY, { 'left-seat': pilotKg, 'wing-tanks': fuelKg });
    return judge(loading).state === 'inside';
  });
}

describe('minimumSoloKg()', () => {
  test('a pilot just below is outside at some fuel content, one just above is inside at all', () => {
    const corners = fc.record({
      lowestKg: fc.integer({ min: 330, max: 430 }),
      forwardMm: fc.integer({ min: 1640, max: 1716 }),
    });
    fc.assert(
      fc.property(corners, ({ lowestKg, forwardMm }) => {
        const envelope = rectangle(lowestKg, forwardMm, 1900);
        const { aircraft, leastKg } = soloOf(envelope);
        if (leastKg === undefined) {
          expect(isInsideAtAnyFuel(aircraft, envelope, 110)).toBe(false);
          return;
        }
        expect(isInsideAtAnyFuel(aircraft, envelope, leastKg + 1e-4)).toBe(true);
        if (leastKg > MIN_TRIED_KG) expect(isInsideAtAnyFuel(aircraft, envelope, leastKg - 0.05)).toBe(false);
      }),
      RUNS,
    );
  });

  test('finds a pilot in the last fraction of a kilogram that the seat takes', () => {
    const corners = rectangle(405.2, 1600, 1900);
    const envelope = envelopeOf(corners);
    const stations = TEMPLATE.stations.map((station) =>
      station.kind === 'pilot' ? { ...station, maximumMassKg: 79.5 } : station,
    ) as Aircraft['stations'];
    const found = envelope && minimumSoloKg({ ...TEMPLATE, stations }, { empty: EMPTY, leastPilotKg: 55 }, envelope);
    expect(found).toBeCloseTo(79.2, 5);
  });

  test('meets the lower edge of the envelope exactly', () => {
    expect(soloOf(rectangle(400, 1600, 1900)).leastKg).toBeCloseTo(74, 5);
  });

  test('does not go on for ever where a seat is said to carry a million tonnes', () => {
    const corners = rectangle(590, 1600, 1900);
    const envelope = envelopeOf(corners);
    const stations = TEMPLATE.stations.map((station) =>
      station.kind === 'pilot' ? { ...station, maximumMassKg: 1e9 } : station,
    );
    const leastKg =
      envelope &&
      minimumSoloKg({ ...TEMPLATE, stations, maximumMassKg: 580 }, { empty: EMPTY, leastPilotKg: 55 }, envelope);
    expect(leastKg).toBeUndefined();
  });

  test('is undefined where even the heaviest pilot may not, or no seat is the pilot’s', () => {
    expect(soloOf(rectangle(500, 1600, 1900)).leastKg).toBeUndefined();
    const corners = rectangle(330, 1600, 1900);
    const envelope = envelopeOf(corners);
    const pilotless = { ...TEMPLATE, stations: TEMPLATE.stations.filter(({ kind }) => kind !== 'pilot') };
    expect(envelope && minimumSoloKg(pilotless, { empty: EMPTY, leastPilotKg: 55 }, envelope)).toBeUndefined();
  });

  test('passes over pilots too light for the min. flying mass', () => {
    const corners = rectangle(300, 1500, 1900);
    const aircraft = { ...TEMPLATE, envelope: corners, minimumMassKg: 400 };
    const envelope = envelopeOf(corners);
    if (!envelope) throw new Error('a rectangle bounds an area');
    // At every fuel content, also none: 400 − 326 = 74 kg.
    expect(minimumSoloKg(aircraft, { empty: EMPTY, leastPilotKg: 55 }, envelope)).toBeCloseTo(74, 5);
    const stations = aircraft.stations.filter(({ kind }) => kind !== 'fuel');
    expect(minimumSoloKg({ ...aircraft, stations }, { empty: EMPTY, leastPilotKg: 55 }, envelope)).toBeCloseTo(74, 5);
  });
});
