import type { LoadedAircraft } from '../../record/visit.ts';
import { isAtLeast } from '../numbers/limit-met.ts';
import { envelopeOf } from './envelope.ts';
import { fullFuelKg } from './fuel.ts';
import { GOVERNING } from './governing.ts';
import { loadStationsOf } from './load-space.ts';
import type { AfterBurn, Allowance, Governing, LoadLimits } from './loading-result.ts';

export type { Allowance, Governing, LoadLimits } from './loading-result.ts';

// Every document and page takes useful load and payload from here. Limits are rounded inward in the unit of the
// record, and the other system is converted from that figure, so that the two agree.

/**
 * Returns the max. load in kg: the minimum of all limits.
 *
 * The fuel burnt before a landing, and the fuel that must be left, are for the pilot and the rules of the flight. So
 * the maximum landing mass bounds the aircraft at take-off: with these loads it may land at once, and no figure relies
 * on fuel being burnt. The higher load that may take off if fuel is burnt first is reported separately. The centre of
 * gravity does not count here: the loading sheet shows whether a load can be placed inside the envelope.
 *
 * payload = min(m_max − F, m_envelope − F, m_landing − F, m_zero-fuel) − m_empty, up to the capacity of the stations
 * useful load = min(m_max, m_envelope, m_landing, m_zero-fuel + F) − m_empty, up to the capacity of stations and tanks;
 * m_envelope is the largest mass of the envelope
 *
 * @source definitions of the masses: FAA-H-8083-1B, from memory; of the landing mass our own reading, in this comment
 */
export function loadLimitsOf(aircraft: LoadedAircraft, emptyKg: number): LoadLimits {
  const envelope = aircraft.envelope && envelopeOf(aircraft.envelope);
  const { maximumMassKg, maximumZeroFuelMassKg, maximumLandingMassKg } = aircraft;
  const fuelKg = fullFuelKg(aircraft);
  const takeOff = { 'maximum-mass': maximumMassKg, envelope: envelope?.highestKg };
  const landing = { 'landing-mass': maximumLandingMassKg };
  const withoutFuel = { 'zero-fuel-mass': maximumZeroFuelMassKg };
  const places = placesOf(aircraft);
  const toTakeOff = minOf([...allowances(takeOff, -fuelKg - emptyKg), ...allowances(withoutFuel, -emptyKg), places]);
  const fullTanksPayload = minOf([toTakeOff, ...allowances(landing, -fuelKg - emptyKg)]);
  const usefulLoad = minOf([{ ...toTakeOff, kg: toTakeOff.kg + fuelKg }, ...allowances(landing, -emptyKg)]);
  const burnFor = (payloadKg: number): number =>
    Math.max(0, emptyKg + Math.max(0, payloadKg) + fuelKg - (maximumLandingMassKg ?? Number.POSITIVE_INFINITY));
  const isByLanding = fullTanksPayload.governedBy === 'landing-mass';
  return {
    usefulLoad,
    fullTanksPayload,
    fullFuelKg: fuelKg,
    leastBurnKg: burnFor(fullTanksPayload.kg),
    afterBurn: isByLanding ? afterBurn(toTakeOff.kg, burnFor(toTakeOff.kg), fuelKg) : undefined,
  };
}

/** Undefined if all fuel would have to be burnt, or more: then no separate payload exists. */
function afterBurn(payloadKg: number, burnKg: number, fuelKg: number): AfterBurn | undefined {
  return isAtLeast(payloadKg, 0) && !isAtLeast(burnKg, fuelKg)
    ? { payloadKg, burnKg, leftKg: fuelKg - burnKg }
    : undefined;
}

type Limits = Partial<Record<Governing, number | undefined>>;

function allowances(limits: Limits, addedKg: number): Allowance[] {
  return GOVERNING.flatMap((governedBy): Allowance[] => {
    const limitKg = limits[governedBy];
    return limitKg === undefined ? [] : [{ kg: limitKg + addedKg, governedBy }];
  });
}

/**
 * Returns the first of the minimum values: if two limits are met at once, the one of the aircraft is named before those
 * of its stations.
 */
function minOf([first, ...rest]: readonly Allowance[]): Allowance {
  return rest.reduce((least, each) => (each.kg < least.kg ? each : least), first as Allowance);
}

/**
 * Returns the joint capacity of seats and baggage compartments. Filling them one after another up to every limit that
 * joins them gives the maximum, as long as no two of these cross; if they do, the release check refuses them, and the
 * figure is not above the true value.
 */
function placesOf(aircraft: LoadedAircraft): Allowance {
  const left = (aircraft.loadingLimits ?? []).map(({ stations, maximumMassKg }) => ({ stations, maximumMassKg }));
  let [kg, aloneKg] = [0, 0];
  for (const { id, maximumMassKg } of loadStationsOf(aircraft)) {
    const joined = left.filter(({ stations }) => stations.includes(id));
    const roomKg = Math.min(maximumMassKg, ...joined.map((limit) => limit.maximumMassKg));
    for (const limit of joined) limit.maximumMassKg -= roomKg;
    kg += roomKg;
    aloneKg += maximumMassKg;
  }
  return { kg, governedBy: kg < aloneKg ? 'joint-limits' : 'places' };
}
