import type * as z from 'zod';
import * as m from '../text/generated/messages.ts';
import { arm, choice, count, distance, flow, id, line, list, mass, number, part } from './field.ts';
import { LoadingLimit, Station } from './station.ts';

const Product = {
  maker: line('Maker', 'Maker of the product', 'Tarn Motors'),
  model: line('Model', 'Model designation', 'T4-90'),
  serial: line('Serial number', 'Serial number on the data plate', 'T4-2217', 60),
};

export const Engine = part('Engine', 'The engine fitted', {
  ...Product,
  maximumPowerKw: number('Maximum power', 'Rated maximum power', 'kW', 66, { min: 0, max: 2_000 }).optional(),
  fuelFlow: flow('Fuel flow', 'Planning fuel flow at cruise', 18, { min: 0.1 }).optional(),
});

export const Propeller = part('Propeller', 'The propeller fitted', Product);

export const EnvelopePoint = part('Envelope point', 'A corner of the mass and balance envelope', {
  arm: arm('Arm', 'Centre of gravity at this corner', 2050, { of: m.aircraft_cornerEnvelope }),
  mass: mass('Mass', 'Aircraft mass at this corner', 600),
});

export const Mac = part('Mean aerodynamic chord', 'Where limits are given in per cent of the chord', {
  leadingEdgeArm: arm('Leading edge', 'Arm of the leading edge of the mean aerodynamic chord', 1780, {
    of: m.aircraft_meanAerodynamicChord,
  }),
  length: distance('Length', 'Length of the mean aerodynamic chord', 1250, { min: 0.001 }),
});

const Range = (
  title: string,
  description: string,
  [forward, aft]: readonly [forward: number, aft: number],
  more: Parameters<typeof arm>[3],
) =>
  part(title, description, {
    forward: arm('Forward', 'Forward end', forward, more),
    aft: arm('Aft', 'Aft end', aft, more),
  });

export const Aircraft = part('Aircraft', 'The aircraft as its papers and limits describe it', {
  registration: line('Registration', 'Nationality and registration marks', 'Q-SLM', 12),
  address24: line('24-bit address', 'Aircraft address, six hexadecimal digits', 'F00A31', 6).optional(),
  maker: line('Maker', 'Maker of the airframe, or builder', 'Ravel Light Aircraft'),
  model: line('Model', 'Model designation', 'Dipper 2'),
  serial: line('Serial number', 'Serial number on the data plate', 'D2-0117', 60),
  yearBuilt: count('Year built', 'Year of manufacture or first permit', 2011, { min: 1900, max: 2200 }).optional(),
  regime: id('Regime', 'Set of rules that this aircraft is kept under', 'generic'),
  layout: choice('Layout', 'How the aircraft stands and is balanced', [
    'nose-wheel',
    'tail-wheel',
    'weight-shift',
  ] as const),
  seats: count('Seats', 'Number of seats', 2, { min: 1, max: 12 }),
  maximumMass: mass('Maximum mass', 'Maximum take-off mass', 600, { min: 1 }),
  maximumLandingMass: mass('Maximum landing mass', 'Where it differs from the maximum take-off mass', 600).optional(),
  maximumZeroFuelMass: mass('Maximum zero-fuel mass', 'Where the type has one', 560).optional(),
  maximumEmptyMass: mass('Maximum empty mass', 'Where the category or type caps the empty mass', 392).optional(),
  datum: line(
    'Datum',
    'What arms are measured from; arms aft of it are positive',
    'Front face of the propeller flange',
  ),
  levelling: line('Levelling means', 'How the aircraft is set level for weighing', 'Cockpit longeron level both ways'),
  airframe: Range('Airframe extent', 'Arms of the foremost and the rearmost point of the airframe', [-300, 6100], {
    of: m.aircraft_airframe,
    outside: 'It is the extent of the airframe itself',
  }),
  mac: Mac.optional(),
  emptyRange: Range('Empty range', 'Permitted range of the empty centre of gravity, where given', [1990, 2120], {
    of: m.aircraft_rangeEmptyCentreGravity,
  }).optional(),
  envelope: list(
    'Envelope',
    'Corners of the permitted area of mass against centre of gravity, in order round it; absent where none is specified, as on weight-shift aircraft',
    EnvelopePoint,
    { min: 3, max: 40 },
  ).optional(),
  stations: list('Stations', 'Every place that takes load', Station, { max: 40 }),
  loadingLimits: list('Loading limits', 'Limits and placards that join stations', LoadingLimit, { max: 20 }).optional(),
  engine: Engine.optional(),
  propeller: Propeller.optional(),
});
export type Aircraft = z.infer<typeof Aircraft>;
