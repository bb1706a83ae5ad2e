import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Cockpit, cockpitGrid, type StateExtra } from '../../../../worker/core/calc/loading/cockpit-grid.ts';
import { cockpitLoads } from '../../../../worker/core/calc/loading/cockpit-loads.ts';
import { envelopeOf } from '../../../../worker/core/calc/loading/envelope.ts';
import type { Aircraft, LoadStation, Station, WaterStation } from '../../../../worker/core/record/visit.ts';
import { RUNS } from '../../../property-runs.ts';
import { readVisit } from '../read-visit.ts';

const TEMPLATE = readVisit('computed-only').aircraft;
const CLOSE_KG = 1e-5;

const tenths = (min: number, max: number, beyond = 0) =>
  fc.integer({ min: min * 10, max: max * 10 }).map((each) => each / 10 + beyond);

/** A single-seater, of which no two limits meet at one mass, with a pilot ahead of the limits, ballast in the nose and in the fin, and water in the wings. */
const gliders = fc
  .record({
    emptyKg: tenths(180, 320),
    emptyMm: tenths(500, 800),
    seatMm: tenths(-600, 100),
    forwardMm: tenths(150, 260),
    widthMm: tenths(60, 240),
    seatKg: fc.record({ minimumKg: tenths(40, 75), maximumKg: tenths(90, 130, 0.03) }),
    nose: fc.record({ armMm: tenths(-1800, -900), massKg: tenths(0, 12) }),
    fin: fc.record({ armMm: tenths(3500, 5000), massKg: tenths(1, 6) }),
    water: fc.record({ armMm: tenths(100, 400), massKg: tenths(1, 120) }),
    maximumKg: tenths(330, 480),
    nonLifting: fc.option(fc.record({ share: tenths(0, 1), roomKg: tenths(60, 160, 0.017) }), { freq: 3 }),
  })
  .map(({ nonLifting, ...drawn }) => ({
    ...drawn,
    nonLifting: nonLifting && {
      liftingPartsMassKg: drawn.emptyKg * (0.4 + nonLifting.share / 10),
      maximumMassKg: drawn.emptyKg * (0.6 - nonLifting.share / 10) + nonLifting.roomKg,
    },
  }));
type Glider = typeof gliders extends fc.Arbitrary<infer Value> ? Value : never;

const tank = (id: string, { armMm, massKg }: Glider['water']): WaterStation => ({
  ...{ id, name: id, kind: 'water', armMm, capacityL: massKg, densityKgPerL: 1 },
});

/** The aircraft of a record, with states that fix nose ballast, fin and water, or leave the water open. */
function recorded(glider: Glider, states: Record<string, Record<string, number>>): ReturnType<typeof cockpitLoads> {
  const { emptyKg, emptyMm, seatMm, forwardMm, widthMm, seatKg, nose, fin, water, maximumKg, nonLifting } = glider;
  const pilot: LoadStation = {
    ...{ id: 'pilot', name: 'Pilot', kind: 'pilot', armMm: seatMm },
    ...{ minimumMassKg: seatKg.minimumKg, maximumMassKg: seatKg.maximumKg },
  };
  const place: LoadStation = {
    id: 'nose',
    name: 'Nose',
    kind: 'ballast',
    armMm: nose.armMm,
    maximumMassKg: nose.massKg,
  };
  const stations: Station[] = [pilot, place, tank('fin', fin), tank('water', water)];
  const aircraft: Aircraft = {
    ...TEMPLATE,
    stations,
    maximumMassKg: maximumKg,
    cockpitStates: Object.entries(states).map(([name, loads]) => ({
      name,
      loads: Object.entries(loads).map(([station, massKg]) => ({ station, massKg })),
    })),
    ...(nonLifting && { nonLifting }),
  };
  const envelope = envelopeOf(
    [
      { armMm: forwardMm, massKg: 100 },
      { armMm: forwardMm, massKg: 1000 },
      { armMm: forwardMm + widthMm, massKg: 1000 },
      { armMm: forwardMm + widthMm, massKg: 100 },
    ],
    'end-of-drawing',
  );
  if (!envelope) throw new Error('the corners bound an area');
  return cockpitLoads(
    aircraft,
    { empty: { massKg: emptyKg, momentKgMm: emptyKg * emptyMm }, leastPilotKg: 55 },
    envelope,
  );
}

/** The same aircraft as the closed form takes it. */
function closedForm({ emptyKg, emptyMm, seatMm, forwardMm, widthMm, seatKg, maximumKg, nonLifting }: Glider): Cockpit {
  return {
    emptyKg,
    emptyMomentKgMm: emptyKg * emptyMm,
    seatArmMm: seatMm,
    forwardLimitMm: forwardMm,
    aftLimitMm: forwardMm + widthMm,
    maximumMassKg: maximumKg,
    ...seatKg,
    ...(nonLifting && {
      nonLifting: {
        maximumKg: nonLifting.maximumMassKg,
        parts: [{ massKg: emptyKg - nonLifting.liftingPartsMassKg }],
      },
    }),
  };
}

const GOVERNED = {
  'aft-limit': 'envelope',
  'stated-minimum': 'seat',
  'forward-limit': 'envelope',
  'non-lifting-mass': 'non-lifting-mass',
  'maximum-mass': 'maximum-mass',
  'stated-maximum': 'seat',
} as const;

const extrasOf = ({ nose, fin, water }: Glider): StateExtra[] => [
  { ...nose, isNonLifting: true },
  { ...fin },
  { ...water },
];

describe('cockpitLoads() agrees with the closed forms', () => {
  test('in states that fix every mass, and names the limit that governs', () => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(gliders, (glider) => {
        const { nose, fin, water } = glider;
        const [load] = recorded(glider, { full: { nose: nose.massKg, fin: fin.massKg, water: water.massKg } });
        const [row] = cockpitGrid(closedForm(glider), [{ id: 'full', extras: extrasOf(glider) }]) ?? [];
        const [fromKg, toKg] = [row?.minimum?.massKg ?? 0, row?.maximum?.massKg ?? 0];
        // A range narrower than the step of the search may be missed; no placard states one.
        fc.pre(Math.abs(toKg - fromKg) > 1);
        if (fromKg > toKg) {
          seen.add('nobody');
          expect(load).toEqual({ state: 'full' });
          return;
        }
        expect(Math.abs((load?.minimum?.kg ?? Number.NaN) - fromKg)).toBeLessThan(CLOSE_KG);
        expect(Math.abs((load?.maximum?.kg ?? Number.NaN) - toKg)).toBeLessThan(CLOSE_KG);
        expect(load?.minimum?.governedBy).toBe(GOVERNED[row?.minimum?.governedBy ?? 'stated-minimum']);
        expect(load?.maximum?.governedBy).toBe(GOVERNED[row?.maximum?.governedBy ?? 'stated-maximum']);
        seen.add(`least by ${load?.minimum?.governedBy}`).add(`most by ${load?.maximum?.governedBy}`);
      }),
      { ...RUNS, numRuns: 400 },
    );
    expect([...seen].sort()).toEqual([
      'least by envelope',
      'least by seat',
      'most by envelope',
      'most by maximum-mass',
      'most by non-lifting-mass',
      'most by seat',
      'nobody',
    ]);
  });

  test('in states that leave the tanks open, which may hold anything', () => {
    let flown = 0;
    fc.assert(
      fc.property(gliders, (drawn) => {
        // A maximum mass that never governs: it would limit the content of open tanks.
        const glider = { ...drawn, maximumKg: 2000, nonLifting: null };
        const [load] = recorded(glider, { open: { nose: glider.nose.massKg } });
        const optional = extrasOf(glider).map((extra, index) => (index === 0 ? extra : { ...extra, isOptional: true }));
        const [row] = cockpitGrid(closedForm(glider), [{ id: 'open', extras: optional }]) ?? [];
        const [fromKg, toKg] = [row?.minimum?.massKg ?? 0, row?.maximum?.massKg ?? 0];
        fc.pre(Math.abs(toKg - fromKg) > 1);
        if (fromKg > toKg) {
          expect(load).toEqual({ state: 'open' });
          return;
        }
        flown += 1;
        expect(Math.abs((load?.minimum?.kg ?? Number.NaN) - fromKg)).toBeLessThan(CLOSE_KG);
        expect(Math.abs((load?.maximum?.kg ?? Number.NaN) - toKg)).toBeLessThan(CLOSE_KG);
      }),
      { ...RUNS, numRuns: 300 },
    );
    expect(flown).toBeGreaterThan(50);
  });

  test('keeps every state in its order, and one without a name if the record has none', () => {
    fc.assert(
      fc.property(gliders, (glider) => {
        const states = { full: { nose: glider.nose.massKg }, dry: { fin: 0, water: 0 } };
        expect(recorded(glider, states).map(({ state }) => state)).toEqual(['full', 'dry']);
      }),
      { ...RUNS, numRuns: 10 },
    );
  });

  test('allows nobody in a state that a station does not take, or whose matched ballast has no water', () => {
    const fin = { ...tank('fin', { armMm: 4000, massKg: 6 }), matched: { to: ['water'], table: TABLE } };
    const stations: Station[] = [
      { id: 'pilot', name: 'Pilot', kind: 'pilot', armMm: -200, minimumMassKg: 55, maximumMassKg: 110 },
      fin,
      tank('water', { armMm: 250, massKg: 100 }),
    ];
    const states = {
      over: { fin: 6.5, water: 100 },
      dry: { fin: 2, water: 0 },
      matched: { fin: 2, water: 50 },
      open: { fin: 2 },
    };
    const aircraft: Aircraft = {
      ...TEMPLATE,
      stations,
      maximumMassKg: 500,
      cockpitStates: Object.entries(states).map(([name, loads]) => ({
        name,
        loads: Object.entries(loads).map(([station, massKg]) => ({ station, massKg })),
      })),
    };
    const envelope = envelopeOf(
      [
        { armMm: 100, massKg: 100 },
        { armMm: 100, massKg: 1000 },
        { armMm: 600, massKg: 1000 },
        { armMm: 600, massKg: 100 },
      ],
      'end-of-drawing',
    );
    if (!envelope) throw new Error('the corners bound an area');
    for (const order of [stations, stations.toReversed()]) {
      const options = { empty: { massKg: 250, momentKgMm: 250 * 500 }, leastPilotKg: 55 };
      const loads = cockpitLoads({ ...aircraft, stations: order }, options, envelope);
      expect(loads.map(({ state, minimum }) => [state, minimum !== undefined])).toEqual([
        ['over', false],
        ['dry', false],
        ['matched', true],
        ['open', true],
      ]);
      // Open means any water that the ballast allows: 50 kg or more, of which the least is the worst for a light pilot.
      expect(loads[3]?.minimum?.kg).toBeCloseTo(loads[2]?.minimum?.kg ?? Number.NaN, 5);
    }
  });
});

/** 4 kg of ballast for 100 kg of water. */
const TABLE = [
  { massKg: 0, ballastKg: 0 },
  { massKg: 100, ballastKg: 4 },
];
