import type * as z from 'zod';
import * as m from '../text/generated/messages.ts';
import { CLASSES, UNDERCARRIAGES, UNSTATED_CLASS } from './class.ts';
import { Configuration, WorkedConfiguration } from './configuration.ts';
import { EnergyStore, EnergyUse } from './energy-store.ts';
import { arm, choice, count, distance, flag, flow, id, line, list, mass, number, part, reference } from './field.ts';
import { maximumMass, NoLateralLimits, OwnLimits, Range, stations } from './own-limits.ts';
import { Party } from './party.ts';
import { Product, ProductFields } from './product.ts';
import { HangBolt, LevelAttitude, Suspension } from './suspension.ts';

export const Engine = part('engine', {
  ...ProductFields,
  maximumPowerKw: number('engine_maximumPowerKw', 'kW', 66, { min: 0, max: 2_000 }).optional(),
  fuelFlow: flow('engine_fuelFlow', 18, { min: 0.1 }).optional(),
  hasOilSump: flag('engine_hasOilSump', true).optional(),
});

export const Propeller = part('propeller', ProductFields);

export const Mac = part('mac', {
  leadingEdgeArm: arm('mac_leadingEdgeArm', 1780, {
    of: m.aircraft_meanAerodynamicChord,
  }),
  length: distance('mac_length', 1250, { min: 0.001 }),
});

/** A load that counts in one state of the aircraft, such as a full fin tank. */
export const StateLoad = part('stateLoad', {
  station: reference('station', 'stateLoad_station', 'fin-tank'),
  mass: mass('stateLoad_mass', 5.4),
});

/** A state for which min. and max. mass in the cockpit are computed. */
export const CockpitState = part(
  'cockpitState',
  {
    name: line('cockpitState_name', 'Fin tank full, battery in the fin', 60),
    loads: list('cockpitState_loads', StateLoad, { max: 12 }),
  },
  'name',
);

export const Aircraft = part('aircraft', {
  registration: line('aircraft_registration', 'Q-SLM', 12),
  address24: line('aircraft_address24', 'F00A31', 6).optional(),
  maker: line('aircraft_maker', 'Ravel Light Aircraft'),
  model: line('aircraft_model', 'Dipper 2'),
  serial: line('aircraft_serial', 'D2-0117', 60),
  yearBuilt: count('aircraft_yearBuilt', 2011, { min: 1900, max: 2200 }).optional(),
  regime: id('aircraft_regime', 'generic'),
  class: choice('aircraft_class', [...CLASSES, UNSTATED_CLASS] as const),
  undercarriage: choice('aircraft_undercarriage', UNDERCARRIAGES).optional(),
  seats: count('aircraft_seats', 2, { min: 1, max: 12 }),
  maximumMass,
  datum: line('aircraft_datum', 'Front face of the propeller flange'),
  levelling: line('aircraft_levelling', 'Cockpit longeron level both ways'),
  levelAttitude: LevelAttitude.optional(),
  airframe: Range('aircraft_airframe', [-300, 6100], {
    of: m.aircraft_airframe,
    outside: 'It is the extent of the airframe itself',
  }),
  mac: Mac.optional(),
  ...OwnLimits,
  noLateralLimits: NoLateralLimits.optional(),
  stations,
  configuration: WorkedConfiguration.optional(),
  configurations: list('aircraft_configurations', Configuration, { max: 8 }).optional(),
  suspension: Suspension.optional(),
  hangBolt: HangBolt.optional(),
  cockpitStates: list('aircraft_cockpitStates', CockpitState, { max: 12 }).optional(),
  energyStores: list('aircraft_energyStores', EnergyStore, { max: 8 }).optional(),
  energyUse: EnergyUse.optional(),
  engine: Engine.optional(),
  propeller: Propeller.optional(),
  owner: Party.optional(),
  operator: Party.optional(),
  products: list('aircraft_products', Product, { max: 20 }).optional(),
});
export type Aircraft = z.infer<typeof Aircraft>;
