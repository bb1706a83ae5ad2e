import type { Visit } from '../../record/visit.ts';
import { tanksOf } from './fuel.ts';

/** Payload that a regime requires of a light aircraft: persons in every seat, and fuel for some time. */
export interface PayloadRule {
  perSeatKg: number;
  fuelHours: number;
}

export interface Payload {
  /** Maximum mass less empty mass. */
  availableKg: number;
  personsKg: number;
  fuelKg: number;
  /** Available less required payload; negative if the rule is not met. */
  sparePayloadKg: number;
}

/**
 * Compares the payload with a rule: maximum mass − empty mass − seats × person − fuel flow × time × density. The fuel
 * part needs the engine's fuel flow.
 *
 * @source common practice, no source; the figures are in the regime
 */
export function payloadAgainst(visit: Pick<Visit, 'aircraft'>, emptyKg: number, rule: PayloadRule): Payload {
  const { aircraft } = visit;
  const densityKgPerL = tanksOf(aircraft)[0]?.densityKgPerL ?? 0;
  const availableKg = aircraft.maximumMassKg - emptyKg;
  const personsKg = aircraft.seats * rule.perSeatKg;
  const fuelKg = (aircraft.engine?.fuelFlowLPerH ?? 0) * rule.fuelHours * densityKgPerL;
  return { availableKg, personsKg, fuelKg, sparePayloadKg: availableKg - personsKg - fuelKg };
}
