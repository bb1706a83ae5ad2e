import type * as z from 'zod';
import type { FieldText } from '../text/field-texts.ts';
import * as m from '../text/generated/messages.ts';
import { arm, choice, count, distance, flow, id, line, list, mass, number, part } from './field.ts';
import { LoadingLimit, Station } from './station.ts';

const Product = {
  maker: line('product_maker', 'Tarn Motors'),
  model: line('product_model', 'T4-90'),
  serial: line('product_serial', 'T4-2217', 60),
};

export const Engine = part('engine', {
  ...Product,
  maximumPowerKw: number('engine_maximumPowerKw', 'kW', 66, { min: 0, max: 2_000 }).optional(),
  fuelFlow: flow('engine_fuelFlow', 18, { min: 0.1 }).optional(),
});

export const Propeller = part('propeller', Product);

export const EnvelopePoint = part('envelopePoint', {
  arm: arm('envelopePoint_arm', 2050, { of: m.aircraft_cornerEnvelope }),
  mass: mass('envelopePoint_mass', 600),
});

export const Mac = part('mac', {
  leadingEdgeArm: arm('mac_leadingEdgeArm', 1780, {
    of: m.aircraft_meanAerodynamicChord,
  }),
  length: distance('mac_length', 1250, { min: 0.001 }),
});

const Range = (
  text: FieldText,
  [forward, aft]: readonly [forward: number, aft: number],
  more: Parameters<typeof arm>[2],
) =>
  part(text, {
    forward: arm('range_forward', forward, more),
    aft: arm('range_aft', aft, more),
  });

export const Aircraft = part('aircraft', {
  registration: line('aircraft_registration', 'Q-SLM', 12),
  address24: line('aircraft_address24', 'F00A31', 6).optional(),
  maker: line('aircraft_maker', 'Ravel Light Aircraft'),
  model: line('aircraft_model', 'Dipper 2'),
  serial: line('aircraft_serial', 'D2-0117', 60),
  yearBuilt: count('aircraft_yearBuilt', 2011, { min: 1900, max: 2200 }).optional(),
  regime: id('aircraft_regime', 'generic'),
  layout: choice('aircraft_layout', ['nose-wheel', 'tail-wheel', 'weight-shift'] as const),
  seats: count('aircraft_seats', 2, { min: 1, max: 12 }),
  maximumMass: mass('aircraft_maximumMass', 600, { min: 1 }),
  maximumLandingMass: mass('aircraft_maximumLandingMass', 600).optional(),
  maximumZeroFuelMass: mass('aircraft_maximumZeroFuelMass', 560).optional(),
  maximumEmptyMass: mass('aircraft_maximumEmptyMass', 392).optional(),
  datum: line('aircraft_datum', 'Front face of the propeller flange'),
  levelling: line('aircraft_levelling', 'Cockpit longeron level both ways'),
  airframe: Range('aircraft_airframe', [-300, 6100], {
    of: m.aircraft_airframe,
    outside: 'It is the extent of the airframe itself',
  }),
  mac: Mac.optional(),
  emptyRange: Range('aircraft_emptyRange', [1990, 2120], {
    of: m.aircraft_rangeEmptyCentreGravity,
  }).optional(),
  envelope: list('aircraft_envelope', EnvelopePoint, { min: 3, max: 40 }).optional(),
  stations: list('aircraft_stations', Station, { max: 40 }),
  loadingLimits: list('aircraft_loadingLimits', LoadingLimit, { max: 20 }).optional(),
  engine: Engine.optional(),
  propeller: Propeller.optional(),
});
export type Aircraft = z.infer<typeof Aircraft>;
