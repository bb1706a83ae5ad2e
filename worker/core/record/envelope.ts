import * as z from 'zod';
import { type FieldText, fieldText } from '../text/field-texts.ts';
import * as m from '../text/generated/messages.ts';
import { arm, choice, distance, identifier, line, list, mass, number, part, reference } from './field.ts';

/** A corner of an envelope: mass, and arm or per cent of the mean aerodynamic chord. */
export const EnvelopePoint = part('envelopePoint', {
  arm: arm('envelopePoint_arm', 2050, { of: m.aircraft_cornerEnvelope }).optional(),
  chordPercent: number('envelopePoint_chordPercent', '%', 24.5, { min: -100, max: 200 }).optional(),
  mass: mass('envelopePoint_mass', 600),
});

/** A limit as an equation: the arm at one mass, and the change of the arm for each step of mass. */
export const LimitEquation = part('limitEquation', {
  fromMass: mass('limitEquation_fromMass', 450),
  toMass: mass('limitEquation_toMass', 600),
  arm: arm('limitEquation_arm', 1980, { of: m.aircraft_cornerEnvelope }),
  atMass: mass('limitEquation_atMass', 450),
  armChange: distance('limitEquation_armChange', 40).optional(),
  perMass: mass('limitEquation_perMass', 100, { min: 0.001 }).optional(),
});

const side = (text: FieldText) => list(text, LimitEquation, { min: 1, max: 20 });

/** Envelope by equations, one list for each side, that meet from the lowest to the highest mass. */
export const LimitEquations = part('limitEquations', {
  forward: side('limitEquations_forward'),
  aft: side('limitEquations_aft'),
});

/** What the lower edge of an envelope is. */
export const lowerEdge = () => choice('envelopeLowerEdge', ['limit', 'end-of-drawing'] as const);

const LateralByMass = part('lateralByMass', {
  by: choice('lateralByMass_by', ['mass'] as const),
  corners: list(
    'lateralByMass_corners',
    part('lateralMassPoint', {
      mass: mass('lateralMassPoint_mass', 600),
      lateralArm: distance('lateralMassPoint_lateralArm', -40),
    }),
    { min: 3, max: 40 },
  ),
});

const LateralByArm = part('lateralByArm', {
  by: choice('lateralByArm_by', ['arm'] as const),
  corners: list(
    'lateralByArm_corners',
    part('lateralArmPoint', {
      arm: arm('lateralArmPoint_arm', 2565, { of: m.aircraft_cornerEnvelope }),
      lateralArm: distance('lateralArmPoint_lateralArm', -64),
    }),
    { min: 3, max: 40 },
  ),
});

/** Permitted area of the lateral centre of gravity. */
export const LateralEnvelope = z
  .discriminatedUnion('by', [LateralByMass, LateralByArm])
  .meta({ ...fieldText('lateralEnvelope') });

/** A category with its own limits, in which the aircraft may be flown with the same empty mass. */
export const Category = part('category', {
  id: identifier(['category'], 'category_id', 'utility'),
  name: line('category_name', 'Utility', 40),
  maximumMass: mass('category_maximumMass', 560, { min: 1 }).optional(),
  envelope: list('category_envelope', EnvelopePoint, { min: 3, max: 40 }),
  envelopeLowerEdge: lowerEdge().optional(),
  unusedStations: list('category_unusedStations', reference('station', 'category_unusedStations_each', 'shelf'), {
    max: 40,
  }).optional(),
});
