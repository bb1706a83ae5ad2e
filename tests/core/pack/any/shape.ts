import fc from 'fast-check';
import { classParts, ofClass } from './classes.ts';
import { configurations, configured } from './configurations.ts';
import { ownLimits, ownLimitsOver } from './envelopes.ts';
import { stations } from './stations.ts';
import { arm, defined, lateralArm, mass, name, optional } from './values.ts';

/** An aircraft of any class and shape, as far as its record states it. */
export const shape = fc.record({
  stations,
  ownLimits,
  ofClass,
  configurations,
  configuration: optional(fc.record({ name: name(40), supersedes: optional(name(200)) }).map(defined)),
  maximumMass: mass(2000),
  emptyMass: mass(800),
  emptyArm: arm,
  emptyLateralArm: optional(lateralArm),
});

export type AnyShape = typeof shape extends fc.Arbitrary<infer Value> ? Value : never;

/** What an aircraft keeps of the record that it stands in. */
const KEPT = ['registration', 'address24', 'maker', 'model', 'serial', 'yearBuilt', 'regime', 'datum', 'levelling'];

/** The aircraft as posted, in place of the one of a record. */
export function shaped(own: object, drawn: AnyShape, releasedBy: string): { aircraft: object; schedules: object[] } {
  const { stations: places, configuration, maximumMass } = drawn;
  const others = configured(places, drawn.configurations);
  const aircraft = {
    ...Object.fromEntries(Object.entries(own).filter(([key]) => KEPT.includes(key))),
    maximumMass,
    ...classParts(places, drawn.ofClass, releasedBy),
    ...ownLimitsOver(places, drawn.ownLimits),
    stations: places,
    configuration: configuration && { id: 'worked', ...configuration },
    configurations: drawn.configurations.length > 0 ? others.configurations : undefined,
  };
  return { aircraft: defined(aircraft), schedules: others.schedules };
}
