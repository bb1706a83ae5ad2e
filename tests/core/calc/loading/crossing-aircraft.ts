import fc from 'fast-check';
import type { Aircraft, Station, WaterStation } from '../../../../worker/core/record/visit.ts';
import { readVisit } from '../read-visit.ts';
import type { Loadable } from './random-aircraft.ts';

const TEMPLATE = readVisit('computed-only').aircraft;

/** Whole kilograms and centimetres, so that limits meet in one point now and then, as they do in manuals. */
const kg = (min: number, max: number) => fc.integer({ min, max });
const mm = (min: number, max: number) => fc.integer({ min: min / 10, max: max / 10 }).map((cm) => cm * 10);

/** Table of ballast against water: each row adds less ballast for the water than the one before. */
const concaveTable = fc
  .record({
    startKg: fc.constantFrom<number[]>(0, 0, 20),
    steps: fc.array(fc.record({ waterKg: kg(10, 40), share: fc.integer({ min: 0, max: 9 }) }), {
      minLength: 1,
      maxLength: 2,
    }),
  })
  .map(({ startKg, steps }) => {
    // Up to 0.2 kg of ballast for a kilogram of water, and never more than in the row before.
    const shares = steps.map(({ share }) => share / 50).sort((a, b) => b - a);
    const first = { massKg: startKg, ballastKg: startKg * 0.2 };
    const rows = [first];
    for (const [index, { waterKg }] of steps.entries()) {
      const last = rows.at(-1) ?? first;
      rows.push({ massKg: last.massKg + waterKg, ballastKg: last.ballastKg + waterKg * (shares[index] ?? 0) });
    }
    return rows;
  });

const limits = fc.array(
  fc.record({
    joins: fc.array(fc.boolean(), { minLength: 5, maxLength: 5 }),
    maximumMassKg: kg(30, 260),
    when: fc.option(
      fc.record({
        joins: fc.array(fc.boolean(), { minLength: 5, maxLength: 5 }),
        aboveKg: fc.constantFrom(0, 0, 40, 70),
      }),
      { freq: 2 },
    ),
  }),
  { minLength: 1, maxLength: 3 },
);

/**
 * Aircraft with five stations, whose limits cross each other: they join any stations, tanks among them, and some hold on a condition
 * only. With water, a tail tank follows the wing tank; with an external load there may be a higher maximum mass.
 */
export function crossingLoadables(): fc.Arbitrary<Loadable> {
  return fc
    .record({
      pilot: fc.record({ armMm: mm(200, 900), minimumMassKg: kg(40, 70), maximumMassKg: kg(80, 120) }),
      seat: fc.record({ armMm: mm(-200, 2500), maximumMassKg: kg(20, 120) }),
      fuel: fc.record({ armMm: mm(-300, 1200), capacityL: kg(20, 120), unusableL: fc.constantFrom(0, 3) }),
      others: fc.constantFrom('loads' as const, 'water' as const),
      place: fc.record({ armMm: mm(-200, 2500), maximumMassKg: kg(0, 90) }),
      external: fc.record({ armMm: mm(100, 900), maximumMassKg: kg(20, 150) }),
      wing: fc.record({ armMm: mm(200, 700), capacityL: kg(20, 90), isDumpable: fc.boolean() }),
      tail: fc.record({ armMm: mm(3000, 4500), capacityL: kg(2, 12), table: concaveTable }),
      countsTail: fc.boolean(),
      order: fc.shuffledSubarray([0, 1, 2, 3, 4], { minLength: 5, maxLength: 5 }),
      limits,
      emptyKg: kg(150, 350),
      emptyMm: mm(100, 600),
      payloadKg: kg(60, 400),
      caps: fc.record({
        zeroFuelKg: fc.option(kg(60, 300)),
        landingKg: fc.option(kg(60, 300)),
        externalKg: fc.option(kg(0, 120)),
        minimumKg: fc.option(kg(50, 200), { freq: 2 }),
        nonLiftingKg: fc.option(kg(60, 200)),
      }),
    })
    .map(({ pilot, seat, fuel, others, place, external, wing, tail, countsTail, order, emptyKg, emptyMm, ...rest }) => {
      const tank = (id: string, { table, ...of }: Partial<typeof tail> & Omit<typeof tail, 'table'>): WaterStation => ({
        ...{ id, name: id, kind: 'water' as const, densityKgPerL: 1, ...of },
        ...(table && { matched: { to: ['wing'], table } }),
      });
      const inOrder: Station[] = [
        { id: 'pilot', name: 'Pilot', kind: 'pilot', ...pilot },
        { id: 'seat', name: 'Seat', kind: 'passenger', ...seat },
        { id: 'fuel', name: 'Fuel', kind: 'fuel', densityKgPerL: 0.72, ...fuel },
        ...(others === 'loads'
          ? ([
              { id: 'place', name: 'Place', kind: 'baggage', ...place },
              { id: 'external', name: 'External', kind: 'external', ...external },
            ] as const)
          : [tank('wing', wing), { ...tank('tail', tail), ...(countsTail && { isNonLifting: true }) }]),
      ];
      const stations = order.map((index) => inOrder[index]).filter((station) => station !== undefined);
      return { aircraft: limited(stations, emptyKg, rest), empty: { massKg: emptyKg, momentKgMm: emptyKg * emptyMm } };
    });
}

type Drawn = typeof limits extends fc.Arbitrary<infer Value> ? Value : never;

interface Limits {
  limits: Drawn;
  payloadKg: number;
  caps: Record<'zeroFuelKg' | 'landingKg' | 'externalKg' | 'minimumKg' | 'nonLiftingKg', number | null>;
}

function limited(stations: Station[], emptyKg: number, { limits: drawn, payloadKg, caps }: Limits): Aircraft {
  const joined = (joins: readonly boolean[]): string[] =>
    stations.filter((_, index) => joins[index]).map(({ id }) => id);
  const liftingPartsMassKg = emptyKg * 0.4;
  return {
    ...TEMPLATE,
    stations,
    maximumMassKg: emptyKg + payloadKg,
    loadingLimits: drawn.map(({ joins, maximumMassKg, when }, index) => ({
      id: `limit-${index}`,
      text: `Limit ${index}`,
      stations: joined(joins),
      maximumMassKg,
      ...(when && { when: { stations: joined(when.joins), aboveKg: when.aboveKg } }),
    })),
    ...(caps.zeroFuelKg !== null && { maximumZeroFuelMassKg: emptyKg + caps.zeroFuelKg }),
    ...(caps.landingKg !== null && { maximumLandingMassKg: emptyKg + caps.landingKg }),
    ...(caps.externalKg !== null && { maximumMassWithExternalLoadKg: emptyKg + payloadKg + caps.externalKg }),
    ...(caps.minimumKg !== null && { minimumMassKg: emptyKg + caps.minimumKg }),
    ...(caps.nonLiftingKg !== null && {
      nonLifting: { maximumMassKg: emptyKg - liftingPartsMassKg + caps.nonLiftingKg, liftingPartsMassKg },
    }),
  };
}
