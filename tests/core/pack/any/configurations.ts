import fc from 'fast-check';
import { UNDERCARRIAGES } from '../../../../worker/core/record/class.ts';
import { ownLimits, ownLimitsOver } from './envelopes.ts';
import { type AnyStation, stations } from './stations.ts';
import { arm, defined, lateralArm, mass, massOrNone, name, optional, share, tenths } from './values.ts';

const kitLine = fc
  .record({
    kind: fc.constantFrom('off', 'on'),
    name: name(80),
    mass: massOrNone(40),
    massLimit: optional(mass(2)),
    arm,
    lateralArm: optional(lateralArm),
  })
  .map(defined);

const schedule = fc.record({
  reference: name(200),
  basis: fc.constantFrom('weighed', 'computed'),
  emptyMass: massOrNone(800),
  emptyMassLimit: optional(mass(2)),
  emptyArm: optional(arm),
  emptyMoment: optional(tenths(-1_000_000, 900_000_000)),
  emptyLateralArm: optional(lateralArm),
});

/** Each follows from another, or has a schedule that stays valid, or neither. */
const others = fc.array(
  fc.record({
    name: name(40),
    undercarriage: optional(fc.constantFrom(...UNDERCARRIAGES)),
    seats: optional(fc.integer({ min: 1, max: 12 })),
    maximumMass: optional(mass(2000)),
    limits: optional(ownLimits),
    stations: optional(stations),
    from: fc.constantFrom('worked', 'another', 'standing', 'standing', 'nothing'),
    share,
    kit: fc.array(kitLine, { maxLength: 60 }),
    schedule,
  }),
  { maxLength: 4 },
);

/** Zero to four other configurations; every second visit has none. */
export const configurations = optional(others).map((drawn) => drawn ?? []);

/** Names that differ in what the names of documents cannot show. */
const IDS = ['Floats.1', 'floats-1', 'FLOATS.1', 'floats-1_2'];

type AnyConfigurations = typeof others extends fc.Arbitrary<infer Value> ? Value : never;

/** The configurations as posted, and the schedules that stay valid. */
export function configured(
  worked: readonly AnyStation[],
  drawn: AnyConfigurations,
): { configurations: object[]; schedules: object[] } {
  const idOf = (index: number): string => IDS[index] ?? '';
  return {
    configurations: drawn.map(({ limits, from, share: part, kit, schedule: _, ...own }, index) =>
      defined({
        id: idOf(index),
        ...own,
        ...(limits && ownLimitsOver(own.stations ?? worked, limits)),
        follows:
          from === 'worked'
            ? { kit }
            : from === 'another'
              ? { configuration: idOf(Math.floor(part * (drawn.length - 1))), kit }
              : undefined,
      }),
    ),
    schedules: drawn.flatMap(({ from, schedule: each }, index) =>
      from === 'standing' ? [defined({ configuration: idOf(index), date: '2024-05-17', ...each })] : [],
    ),
  };
}
