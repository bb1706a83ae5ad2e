import * as m from '../text/generated/messages.ts';
import { UNDERCARRIAGES } from './class.ts';
import { arm, choice, count, distance, identifier, line, list, mass, part, reference } from './field.ts';
import { maximumMass, OwnLimits, stations } from './own-limits.ts';

const name = line('configuration_name', 'On floats', 40);

/** The configuration that the visit weighed or computed: its schedule follows from the baseline of the record. */
export const WorkedConfiguration = part('workedConfiguration', {
  id: identifier(['configuration'], 'configuration_id', 'wheels'),
  name,
  supersedes: line('workedConfiguration_supersedes', 'Schedule 2, on floats').optional(),
});

/** What leaves or comes aboard between two configurations. */
export const KitLine = part('kitLine', {
  kind: choice('kitLine_kind', ['off', 'on'] as const),
  name: line('kitLine_name', 'Left door', 80),
  mass: mass('kitLine_mass', 3.1),
  massLimit: mass('kitLine_massLimit', 0.05).optional(),
  arm: arm('kitLine_arm', 1250, { of: m.item }),
  lateralArm: distance('kitLine_lateralArm', -600).optional(),
});

/** How the schedule of a configuration follows from another. */
export const FollowsFrom = part('followsFrom', {
  configuration: reference('configuration', 'followsFrom_configuration', 'wheels').optional(),
  kit: list('followsFrom_kit', KitLine, { max: 60 }),
});

/** Another configuration of the aircraft, with another valid schedule than that of this visit. Limits that it does not state are those of the aircraft. */
export const Configuration = part('configuration', {
  id: identifier(['configuration'], 'configuration_id', 'wheels'),
  name,
  undercarriage: choice('aircraft_undercarriage', UNDERCARRIAGES).optional(),
  seats: count('aircraft_seats', 2, { min: 1, max: 12 }).optional(),
  follows: FollowsFrom.optional(),
  maximumMass: maximumMass.optional(),
  ...OwnLimits,
  stations: stations.optional(),
});
