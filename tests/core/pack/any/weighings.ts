import fc from 'fast-check';
import type { AnyStation } from './stations.ts';
import { arm, defined, lateralArm, mass, name, optional, share, tenths } from './values.ts';

const degrees = tenths(-90, 90);

const scale = fc
  .record({
    serial: name(60),
    capacity: mass(1000),
    resolution: fc.constantFrom(0.02, 0.1, 5),
    errorLimit: fc.constantFrom(0, 0.2, 3),
    calibratedOn: fc.constant('2026-01-10'),
    certificate: optional(name(60)),
    calibrationDueOn: fc.constant('2027-09-30'),
    corrections: optional(fc.array(fc.record({ reading: mass(500), add: tenths(-2, 2) }), { maxLength: 40 })),
  })
  .map(defined);

const point = fc.record({
  name: name(40),
  side: fc.constantFrom('left', 'right', 'centre'),
  scaleShare: share,
  offset: arm,
  armLimit: tenths(0, 5),
  lateralArm: optional(lateralArm),
  lateralArmLimit: optional(tenths(0, 5)),
  tare: optional(tenths(0, 3)),
  readings: fc.array(fc.oneof({ weight: 8, arbitrary: mass(400) }, { weight: 1, arbitrary: tenths(-9, 3) }), {
    minLength: 1,
    maxLength: 20,
  }),
});

const looseItem = fc
  .record({
    name: name(80),
    mass: tenths(0, 5),
    massLimit: optional(tenths(0, 1)),
    arm,
    lateralArm: optional(lateralArm),
  })
  .map(defined);

const hangTest = fc
  .record({
    state: name(60),
    angleDeg: degrees,
    angleLimitDeg: optional(tenths(0, 10)),
    mass: optional(mass(500)),
    addedMass: optional(mass(60)),
    addedAftOfBolt: optional(tenths(-900, 900)),
    addedBelowBolt: optional(tenths(-900, 1500)),
  })
  .map(defined);

const distance = fc.record({ name: name(80), distance: arm, limit: optional(tenths(0, 5)) }).map(defined);

/** A weighing on any points; what was weighed, when and by whom stays as in the record. */
export const weighing = fc.record({
  scales: fc.array(scale, { minLength: 1, maxLength: 12 }),
  points: fc.array(point, { minLength: 1, maxLength: 12 }),
  level: optional(
    fc.record({ longitudinalDeg: degrees, lateralDeg: degrees, limitDeg: optional(tenths(0, 10)) }).map(defined),
  ),
  fuelState: optional(fc.constantFrom('drained-to-unusable', 'dry', 'stated', 'full')),
  oilState: optional(fc.constantFrom('full', 'drained', 'stated')),
  oilArm: optional(arm),
  oilMassLimit: optional(tenths(0, 2)),
  cgHeight: optional(tenths(-900, 1500)),
  support: optional(name(200)),
  distances: optional(fc.array(distance, { maxLength: 20 })),
  hangTests: optional(fc.array(hangTest, { maxLength: 8 })),
  itemsAboard: optional(fc.array(looseItem, { maxLength: 60 })),
  itemsMissing: optional(fc.array(looseItem, { maxLength: 60 })),
  note: optional(name(200)),
  volume: tenths(0, 40),
});

type AnyWeighing = typeof weighing extends fc.Arbitrary<infer Value> ? Value : never;

const REPLACED = ['fuelAboard', 'level', 'fuelState', 'oilState', 'oilArm', 'oilMassLimit', 'cgHeight', 'support'];

/** The weighing as posted: the wheels stand where the empty aircraft comes to lie as far aft as wanted. */
export function weighed(
  own: Readonly<Record<string, unknown>>,
  places: readonly AnyStation[],
  { emptyArm, drawn }: { emptyArm: number; drawn: AnyWeighing },
): object {
  const { scales, points, volume, fuelState, ...rest } = drawn;
  const kept = Object.fromEntries(Object.entries(own).filter(([key]) => !REPLACED.includes(key)));
  const idOf = (index: number): string => `scale-${index}`;
  const tanks = places.filter(({ kind }) => kind === 'fuel');
  return defined({
    ...kept,
    ...rest,
    scales: scales.map((each, index) => ({ id: idOf(index), ...each })),
    points: points.map(({ scaleShare, offset, ...each }, index) =>
      defined({
        id: `point-${index}`,
        ...each,
        scale: idOf(Math.floor(scaleShare * (scales.length - 1))),
        arm: index === 0 ? emptyArm : emptyArm + offset / 10,
      }),
    ),
    fuelState,
    fuelAboard: fuelState === 'stated' ? tanks.map(({ id }) => ({ station: id, volume })) : undefined,
  });
}
