import fc from 'fast-check';
import { CLASSES, UNDERCARRIAGES, UNSTATED_CLASS } from '../../../../worker/core/record/class.ts';
import { PRODUCTS } from '../../../../worker/core/record/product.ts';
import type { AnyStation } from './stations.ts';
import { arm, defined, mass, massOrNone, name, optional, share, tenths } from './values.ts';

const degrees = tenths(-90, 90);

const position = fc.record({
  name: name(40),
  arm: optional(arm),
  fromMass: optional(massOrNone(300)),
  toMass: optional(mass(600)),
  note: optional(name(200)),
});

const suspension = fc.record({
  by: fc.constantFrom('take-off-mass', 'occupants', 'front-occupant'),
  positions: fc.array(position, { minLength: 1, maxLength: 20 }).map((all) => all.map(defined)),
});

const product = { maker: name(200), model: name(200), serial: name(60) };

const percent = tenths(0, 100);
const store = fc.record({
  name: name(40),
  serial: optional(name(60)),
  nominalKwh: tenths(0.1, 10_000),
  healthPercent: optional(percent),
  healthLimitPercent: optional(percent),
  healthMeasuredOn: optional(fc.constant('2026-01-15')),
  leastHealthPercent: optional(percent),
  leastChargePercent: percent,
  coldFactor: optional(fc.constantFrom(0.01, 0.8, 1)),
  cycles: optional(fc.integer({ min: 0, max: 100_000 })),
  maximumCycles: optional(fc.integer({ min: 0, max: 100_000 })),
});

const power = tenths(0.1, 2000);
const energyUse = fc
  .record({ cruisePowerKw: power, reservePowerKw: optional(power), reserveMin: tenths(0, 600) })
  .map(defined);

const engine = fc
  .record({
    ...product,
    maximumPowerKw: optional(tenths(1, 2000)),
    fuelFlow: optional(tenths(0.1, 900)),
    hasOilSump: optional(fc.boolean()),
  })
  .map(defined);

/** What a class has beside stations and limits: each part may be there or not, whether it is usual for the class or not. */
export const ofClass = fc.record({
  class: fc.constantFrom(...CLASSES, UNSTATED_CLASS),
  undercarriage: optional(fc.constantFrom(...UNDERCARRIAGES)),
  seats: fc.integer({ min: 1, max: 12 }),
  mac: optional(fc.record({ leadingEdgeArm: arm, length: tenths(1, 3000) })),
  levelAttitude: optional(
    fc.record({
      longitudinalDeg: degrees,
      lateralDeg: degrees,
      toleranceDeg: optional(tenths(0, 10)),
      source: name(200),
    }),
  ),
  suspension: optional(suspension),
  hangBolt: optional(fc.record({ arm, minimumDeg: degrees, maximumDeg: degrees })),
  cockpitStates: optional(
    fc.array(
      fc.record({ name: name(60), loads: fc.array(fc.record({ share, mass: massOrNone(60) }), { maxLength: 12 }) }),
      {
        maxLength: 12,
      },
    ),
  ),
  energyStores: optional(fc.array(store, { maxLength: 8 })),
  energyUse: optional(energyUse),
  engine: optional(engine),
  propeller: optional(fc.record(product)),
  products: optional(fc.array(fc.record({ kind: fc.constantFrom(...PRODUCTS), ...product }), { maxLength: 20 })),
  noLateralLimits: optional(name(200)),
});

type OfClass = typeof ofClass extends fc.Arbitrary<infer Value> ? Value : never;

/** The same as posted. */
export function classParts(
  places: readonly AnyStation[],
  { cockpitStates, energyStores, levelAttitude, noLateralLimits, ...own }: OfClass,
  releasedBy: string,
): object {
  const ids = places.map(({ id }) => id);
  return defined({
    ...own,
    levelAttitude: levelAttitude && defined(levelAttitude),
    cockpitStates: cockpitStates?.map(({ name: state, loads }) => ({
      name: state,
      loads: loads.map(({ share: part, mass: carried }) => ({
        station: ids[Math.floor(part * (ids.length - 1))] ?? '',
        mass: carried,
      })),
    })),
    energyStores: energyStores?.map((each, index) => defined({ id: `store-${index}`, ...each })),
    noLateralLimits: noLateralLimits && { by: releasedBy, paragraph: noLateralLimits },
  });
}
