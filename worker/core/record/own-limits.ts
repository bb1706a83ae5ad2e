import type { FieldText } from '../text/field-texts.ts';
import * as m from '../text/generated/messages.ts';
import { Category, EnvelopePoint, LateralEnvelope, LimitEquations, lowerEdge } from './envelope.ts';
import { arm, choice, line, list, mass, part, person } from './field.ts';
import { LoadingLimit, Station } from './station.ts';

export const Range = (
  text: FieldText,
  [forward, aft]: readonly [forward: number, aft: number],
  more: Parameters<typeof arm>[2],
) =>
  part(text, {
    forward: arm('range_forward', forward, more),
    aft: arm('range_aft', aft, more),
  });

/** Mass of the parts that do not lift, bounded because the wings carry it. */
export const NonLifting = part('nonLifting', {
  maximumMass: mass('nonLifting_maximumMass', 250),
  liftingPartsMass: mass('nonLifting_liftingPartsMass', 131),
});

/** Statement that the flight manual has no lateral limits, by paragraph. */
export const NoLateralLimits = part('noLateralLimits', {
  by: person('noLateralLimits_by', 'jonas', m.limits_statedNoLateralLimits, {
    scope: 'release',
    on: 'assessment',
  }),
  paragraph: line('noLateralLimits_paragraph', 'Flight manual 2.6, revision 4'),
});

export const maximumMass = mass('aircraft_maximumMass', 600, { min: 1 });
export const stations = list('aircraft_stations', Station, { max: 40 });

/** Limits that a configuration may state for itself. */
export const OwnLimits = {
  maximumLandingMass: mass('aircraft_maximumLandingMass', 600).optional(),
  maximumZeroFuelMass: mass('aircraft_maximumZeroFuelMass', 560).optional(),
  maximumEmptyMass: mass('aircraft_maximumEmptyMass', 392).optional(),
  maximumMassWithExternalLoad: mass('aircraft_maximumMassWithExternalLoad', 640).optional(),
  minimumMass: mass('aircraft_minimumMass', 410).optional(),
  nonLifting: NonLifting.optional(),
  emptyRange: Range('aircraft_emptyRange', [1990, 2120], {
    of: m.aircraft_rangeEmptyCentreGravity,
  }).optional(),
  envelope: list('aircraft_envelope', EnvelopePoint, { min: 3, max: 40 }).optional(),
  envelopeEquations: LimitEquations.optional(),
  envelopeLowerEdge: lowerEdge().optional(),
  lateralEnvelope: LateralEnvelope.optional(),
  categories: list('aircraft_categories', Category, { max: 6 }).optional(),
  limitsFrom: choice('aircraft_limitsFrom', ['flight-manual', 'workshop'] as const).optional(),
  loadingLimits: list('aircraft_loadingLimits', LoadingLimit, { max: 20 }).optional(),
};
