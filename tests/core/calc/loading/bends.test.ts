import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { burnPathOf } from '../../../../worker/core/calc/loading/burn-path.ts';
import { envelopeOf } from '../../../../worker/core/calc/loading/envelope.ts';
import { areAllInside, loadingExtremes } from '../../../../worker/core/calc/loading/extremes.ts';
import { loadingOf } from '../../../../worker/core/calc/loading/loading-of.ts';
import { judgeOf } from '../../../../worker/core/calc/loading/verdict.ts';
import type { Aircraft, FuelStation, LoadStation } from '../../../../worker/core/record/visit.ts';
import { RUNS } from '../../../property-runs.ts';
import { readVisit } from '../read-visit.ts';
import { gridLeast, marginTo, momentOf, VALUES } from './grid-oracle.ts';
import type { Loadable } from './random-aircraft.ts';

const TEMPLATE = readVisit('computed-only').aircraft;
/** The product leaves 0.02 mm to its chords, and the grid about as much. */
const WITHIN_MM = 0.05;
const LOW = 300;
const HIGH = 700;

type Table = NonNullable<FuelStation['armByVolume']>;

/** The arm of the first 60 l stays; the rest lies so far aft that the arm of all moves by 10 mm for a litre. */
const SHARP: Table = [
  { volumeL: 0, armMm: 1200 },
  { volumeL: 60, armMm: 1200 },
  { volumeL: 100, armMm: 1600 },
];

/** Tables with one to three pieces, each of which may move the arm by up to 10 mm for a litre. */
const tables: fc.Arbitrary<Table> = fc.oneof(
  fc.constant(SHARP),
  fc
    .tuple(
      fc.integer({ min: 600, max: 2400 }),
      fc.array(fc.record({ spanL: fc.integer({ min: 10, max: 40 }), perL: fc.integer({ min: -10, max: 10 }) }), {
        minLength: 1,
        maxLength: 3,
      }),
    )
    .map(([startMm, pieces]) => {
      const rows = [{ volumeL: 0, armMm: startMm }];
      for (const { spanL, perL } of pieces) {
        const last = rows.at(-1) ?? { volumeL: 0, armMm: startMm };
        rows.push({ volumeL: last.volumeL + spanL, armMm: last.armMm + spanL * perL });
      }
      return rows;
    }),
);

const place = (id: string, kind: 'pilot' | 'baggage', armMm: number, kg: [number, number]): LoadStation => ({
  ...{ id, name: id, kind, armMm, maximumMassKg: kg[1] },
  ...(kind === 'pilot' && { minimumMassKg: kg[0] }),
});

const tankOf = (armByVolume: Table, unusableL: number): Omit<FuelStation, 'id' | 'name'> => ({
  ...{ kind: 'fuel', densityKgPerL: 0.72, unusableL, armByVolume },
  capacityL: armByVolume.at(-1)?.volumeL ?? 0,
});

function loadables(tanks: number): fc.Arbitrary<Loadable> {
  return fc
    .record({
      tables: fc.array(tables, { minLength: tanks, maxLength: tanks }),
      unusableL: fc.constantFrom(0, 3),
      pilotMm: fc.integer({ min: 1000, max: 1900 }),
      otherMm: fc.integer({ min: 900, max: 2600 }),
      otherKg: fc.integer({ min: 20, max: 100 }),
      emptyMm: fc.integer({ min: 1300, max: 1700 }),
      payloadKg: fc.integer({ min: 90, max: 380 }),
    })
    .map(({ tables: drawn, unusableL, pilotMm, otherMm, otherKg, emptyMm, payloadKg }) => {
      const fuel = drawn.map((armByVolume, index): FuelStation => {
        const id = `tank-${index}`;
        return { id, name: id, ...tankOf(armByVolume, unusableL) };
      });
      const aircraft: Aircraft = {
        ...TEMPLATE,
        stations: [
          place('pilot', 'pilot', pilotMm, [55, 110]),
          place('other', 'baggage', otherMm, [0, otherKg]),
          ...fuel,
        ],
        maximumMassKg: LOW + payloadKg,
      };
      return { aircraft, empty: { massKg: LOW, momentKgMm: LOW * emptyMm } };
    });
}

const CORNERS = [
  { armMm: 1250, massKg: LOW },
  { armMm: 1400, massKg: HIGH },
  { armMm: 1800, massKg: HIGH },
  { armMm: 1900, massKg: LOW },
] as const;
const ENVELOPE = envelopeOf(CORNERS);

const CASES = [
  { tanks: 1, steps: 600, runs: 100 },
  { tanks: 2, steps: 100, runs: 60 },
  { tanks: 3, steps: 30, runs: 20 },
];

const MARGINS = {
  forward: marginTo([CORNERS[0], CORNERS[1]], 1),
  aft: marginTo([CORNERS[3], CORNERS[2]], -1),
};

describe('loadingExtremes() agrees with a fine grid', () => {
  test.each(CASES)('with tanks whose arm bends sharply: $tanks', ({ tanks, steps, runs }) => {
    fc.assert(
      fc.property(loadables(tanks), (loadable) => {
        const { aircraft, empty } = loadable;
        const ours = loadingExtremes(aircraft, { empty, leastPilotKg: 55 }, ENVELOPE);
        if (!ours) throw new Error('the lightest pilot is within every limit');
        expectNear(ours.forward.armMm, gridLeast(loadable, VALUES.forward, steps));
        expectNear(-ours.aft.armMm, gridLeast(loadable, VALUES.aft, steps));
        expect(ours.margins.map(({ side }) => side)).toEqual(['forward', 'aft']);
        const grid = ours.margins.map(({ side }) =>
          gridLeast(loadable, MARGINS[side === 'forward' ? 'forward' : 'aft'], steps),
        );
        for (const [index, { margin }] of ours.margins.entries()) expectNear(margin, grid[index] ?? Number.NaN);
        const worst = Math.min(...grid);
        if (ENVELOPE && Math.abs(worst) > WITHIN_MM)
          expect(areAllInside(aircraft, { empty, leastPilotKg: 55 }, ENVELOPE)).toBe(worst > 0);
      }),
      { ...RUNS, numRuns: runs },
    );
  });

  test('at the corner of the table itself', () => {
    // By hand: 300 kg at 1500 mm, a pilot of 55 kg at 1500 mm, and 60 l at 1200 mm: (355 · 1500 + 43.2 · 1200) / 398.2. The next
    // litre acts at 1200 + 60 · 10 = 1800 mm, so no other content is further forward.
    const aircraft: Aircraft = {
      ...TEMPLATE,
      stations: [place('pilot', 'pilot', 1500, [55, 110]), { ...tankOf(SHARP, 0), id: 'tank', name: 'Tank' }],
      maximumMassKg: 600,
    };
    const ours = loadingExtremes(aircraft, { empty: { massKg: 300, momentKgMm: 450_000 }, leastPilotKg: 55 });
    expectNear(ours?.forward.armMm ?? Number.NaN, (355 * 1500 + 43.2 * 1200) / 398.2);
  });
});

describe('judgeOf() finds the worst margin of the burn that a dense sampling finds', () => {
  test.each(CASES)('with tanks whose arm bends sharply, burnt together or one after the other: $tanks', ({ tanks }) => {
    const orders = fc.array(fc.integer({ min: 1, max: 2 }), { minLength: tanks, maxLength: tanks });
    const shares = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: tanks, maxLength: tanks });
    fc.assert(
      fc.property(loadables(tanks), orders, shares, (loadable, order, share) => {
        const { empty } = loadable;
        const [pilot, other, ...drawn] = loadable.aircraft.stations as [LoadStation, LoadStation, ...FuelStation[]];
        const fuel = drawn.map((tank, index) => ({ ...tank, burnOrder: order[index] ?? 1 }));
        const aircraft = { ...loadable.aircraft, stations: [pilot, other, ...fuel], maximumMassKg: HIGH };
        const usableKg = fuel.map(
          ({ capacityL, unusableL, densityKgPerL }, index) =>
            (share[index] ?? 0) * (capacityL - unusableL) * densityKgPerL,
        );
        const load = { pilot: 80, ...Object.fromEntries(fuel.map(({ id }, index) => [id, usableKg[index] ?? 0])) };
        const verdict = judgeOf(aircraft, { envelope: ENVELOPE })(loadingOf(aircraft, empty, load));
        const found = 'worst' in verdict ? verdict.worst?.margin : undefined;
        const moments = fuel.map(momentOf);
        // The first group from full to empty, then the second.
        let worst = Number.POSITIVE_INFINITY;
        for (const burning of [1, 2]) {
          for (let step = 0; step <= 4000; step++) {
            const left = fuel.map(({ burnOrder }, index) => {
              const of = burnOrder === burning ? 1 - step / 4000 : burnOrder < burning ? 0 : 1;
              return of * (usableKg[index] ?? 0);
            });
            const point = {
              massKg: empty.massKg + 80 + left.reduce((sum, kg) => sum + kg, 0),
              momentKgMm:
                empty.momentKgMm +
                80 * pilot.armMm +
                left.reduce((sum, kg, index) => sum + (moments[index]?.(kg) ?? 0), 0),
              fuelKg: left,
            };
            worst = Math.min(worst, MARGINS.forward(point), MARGINS.aft(point));
          }
        }
        expectNear(found ?? Number.NaN, worst);
      }),
      { ...RUNS, numRuns: 300 },
    );
  });
});

function expectNear(actual: number, expected: number): void {
  expect(Math.abs(actual - expected)).toBeLessThanOrEqual(WITHIN_MM);
}

test('burnPathOf() has a limited number of loadings for a table whose arms somebody mistyped by thousands', () => {
  const tank: FuelStation = {
    ...{ id: 'tank', name: 'Tank', kind: 'fuel', capacityL: 9000, unusableL: 0, densityKgPerL: 0.72 },
    armByVolume: [
      { volumeL: 0, armMm: 0 },
      { volumeL: 9000, armMm: 900_000 },
    ],
  };
  const aircraft = { ...TEMPLATE, stations: [...TEMPLATE.stations.filter(({ kind }) => kind !== 'fuel'), tank] };
  const start = loadingOf(aircraft, { massKg: 1, momentKgMm: 1000 }, { tank: 6480 });
  const path = burnPathOf(aircraft)(start);
  expect(path.length).toBeLessThanOrEqual(65);
  expect(path.at(-1)?.massKg).toBeCloseTo(1, 6);
});
