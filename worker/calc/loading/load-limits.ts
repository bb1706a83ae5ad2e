import type { LoadedAircraft } from '../../visit/visit.ts';
import { fullFuelKg } from '../fuel.ts';
import { envelopeOf } from './envelope.ts';
import { loadStationsOf } from './load-space.ts';

/** What stops a load from being greater. */
export const GOVERNING = [
  'maximum-mass',
  'envelope',
  'zero-fuel-mass',
  'landing-mass',
  'joint-limits',
  'places',
] as const;
export type Governing = (typeof GOVERNING)[number];

/** The most that may be loaded, and the limit that is met first; negative where that limit is passed without any load. */
export interface Allowance {
  kg: number;
  governedBy: Governing;
}

export interface LoadLimits {
  /** Crew, baggage and usable fuel together. */
  usefulLoad: Allowance;
  /** Crew and baggage while every tank is full. */
  fullTanksPayload: Allowance;
  /** Usable fuel of all tanks when full. */
  fullFuelKg: number;
  /** Fuel that must be burnt before landing with that payload and full tanks; 0 where the aircraft may land at once. */
  leastBurnKg: number;
}

/**
 * The most that may be loaded, in kg, as the least of everything that limits it.
 *
 * Fuel is burnt before the landing, at the most all of it. So the maximum landing mass bounds the aircraft without usable fuel, as
 * the maximum zero-fuel mass does, and what must be burnt to come down to it is told beside. The centre of gravity is not asked:
 * whether a load can be placed inside the envelope is for the loading sheet.
 *
 * payload = min(m_max − F, m_envelope − F, m_zero-fuel, m_landing) − m_empty, and at most what the places take
 * useful load = min(m_max, m_envelope, m_zero-fuel + F, m_landing + F) − m_empty, and at most what places and tanks take; m_envelope
 * is the greatest mass of the envelope
 *
 * @source definitions of the masses: FAA-H-8083-1B, from memory; of the landing mass our own reading, in this comment
 */
export function loadLimitsOf(aircraft: LoadedAircraft, emptyKg: number): LoadLimits {
  const envelope = aircraft.envelope && envelopeOf(aircraft.envelope);
  const { maximumMassKg, maximumZeroFuelMassKg, maximumLandingMassKg } = aircraft;
  const fuelKg = fullFuelKg(aircraft);
  const takeOff = { 'maximum-mass': maximumMassKg, envelope: envelope?.highestKg };
  const withoutFuel = { 'zero-fuel-mass': maximumZeroFuelMassKg, 'landing-mass': maximumLandingMassKg };
  const places = placesOf(aircraft);
  const fullTanksPayload = leastOf([
    ...allowances(takeOff, -fuelKg - emptyKg),
    ...allowances(withoutFuel, -emptyKg),
    places,
  ]);
  const usefulLoad = leastOf([
    ...allowances(takeOff, -emptyKg),
    ...allowances(withoutFuel, fuelKg - emptyKg),
    { ...places, kg: places.kg + fuelKg },
  ]);
  const takeOffKg = emptyKg + Math.max(0, fullTanksPayload.kg) + fuelKg;
  const leastBurnKg = Math.max(0, takeOffKg - (maximumLandingMassKg ?? Number.POSITIVE_INFINITY));
  return { usefulLoad, fullTanksPayload, fullFuelKg: fuelKg, leastBurnKg };
}

type Limits = Partial<Record<Governing, number | undefined>>;

function allowances(limits: Limits, addedKg: number): Allowance[] {
  return GOVERNING.flatMap((governedBy): Allowance[] => {
    const limitKg = limits[governedBy];
    return limitKg === undefined ? [] : [{ kg: limitKg + addedKg, governedBy }];
  });
}

/** The first of the least: where two limits are met at once, the one of the aircraft is named before those of its places. */
function leastOf([first, ...rest]: readonly Allowance[]): Allowance {
  return rest.reduce((least, each) => (each.kg < least.kg ? each : least), first as Allowance);
}

/**
 * What seats and baggage places take together. Filling them one after another up to every limit that joins them gives the most, as
 * long as no two of these cross; where they do, the gate refuses them, and the figure is not above the truth.
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
