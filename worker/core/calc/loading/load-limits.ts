import type { LoadedAircraft } from '../../record/visit.ts';
import { isAtLeast, isAtMost } from '../numbers/limit-met.ts';
import { envelopeIn } from './aircraft-envelope.ts';
import { fullFuelKg, tanksAndWaterOf, tanksOf, usableFuel } from './fuel.ts';
import { GOVERNING } from './governing.ts';
import { type JointLimits, jointLimits } from './joint-limits.ts';
import { loadStationsOf } from './load-space.ts';
import type { AfterBurn, Allowance, Governing, LoadLimits } from './loading-result.ts';
import { cheapestLine } from './parametric.ts';

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
 * payload = min(m_max − F, m_envelope − F, m_landing − F, m_zero-fuel) − m_empty, up to what the stations may carry together
 * useful load = min(m_max, m_envelope, m_landing, m_zero-fuel + F) − m_empty, up to the capacity of stations and tanks;
 * m_envelope is the largest mass of the envelope
 *
 * @source definitions of the masses: FAA-H-8083-1B, from memory; of the landing mass our own reading, in this comment
 */
export function loadLimitsOf(aircraft: LoadedAircraft, emptyKg: number): LoadLimits {
  const envelope = envelopeIn(aircraft);
  const { maximumMassKg, maximumZeroFuelMassKg, maximumLandingMassKg } = aircraft;
  const fuelKg = fullFuelKg(aircraft);
  const takeOff = { 'maximum-mass': maximumMassKg, envelope: envelope?.highestKg };
  const landing = { 'landing-mass': maximumLandingMassKg };
  const withoutFuel = { 'zero-fuel-mass': maximumZeroFuelMassKg };
  const places = placesOf(aircraft, emptyKg, besideFullTanks(aircraft));
  const toTakeOff = minOf([...allowances(takeOff, -fuelKg - emptyKg), ...allowances(withoutFuel, -emptyKg), places]);
  const fullTanksPayload = minOf([toTakeOff, ...allowances(landing, -fuelKg - emptyKg)]);
  const usefulLoad = minOf([
    ...allowances(takeOff, -emptyKg),
    ...allowances(withoutFuel, fuelKg - emptyKg),
    placesOf(aircraft, emptyKg, everywhere(aircraft)),
    ...allowances(landing, -emptyKg),
  ]);
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
  return rest.reduce((least, each) => (isAtLeast(each.kg, least.kg) ? least : each), first as Allowance);
}

/** Stations that may be filled, and what is aboard already, in kg by station. */
interface Filling {
  fills: readonly { id: string; maximumKg: number }[];
  aboard: ReadonlyMap<string, number>;
}

/** Returns the joint capacity of stations, up to every limit that joins them. */
function placesOf(aircraft: LoadedAircraft, emptyKg: number, filling: Filling): Allowance {
  const kg = mostOn(aircraft, emptyKg, filling);
  const isBy = (without: LoadedAircraft): boolean => !isAtLeast(kg, mostOn(without, emptyKg, filling));
  if (aircraft.nonLifting && isBy({ ...aircraft, nonLifting: undefined }))
    return { kg, governedBy: 'non-lifting-mass' };
  if (aircraft.maximumZeroFuelMassKg !== undefined && isBy({ ...aircraft, maximumZeroFuelMassKg: undefined }))
    return { kg, governedBy: 'zero-fuel-mass' };
  const alone = filling.fills.reduce((sum, { maximumKg }) => sum + maximumKg, 0);
  return { kg, governedBy: isAtLeast(kg, alone) ? 'places' : 'joint-limits' };
}

/**
 * Limits of the whole mass are separate allowances; here only those count that join stations. The zero-fuel mass is one of
 * them, since a limit on the tanks may leave less fuel than they hold.
 */
const withoutMassLimits = (aircraft: LoadedAircraft, emptyKg: number): LoadedAircraft => ({
  ...aircraft,
  ...(!isAtMost(emptyKg, aircraft.maximumZeroFuelMassKg ?? emptyKg) && { maximumZeroFuelMassKg: undefined }),
  maximumLandingMassKg: undefined,
  maximumMassWithExternalLoadKg: undefined,
  minimumMassKg: undefined,
});

/** Negative if what is aboard already exceeds a limit. */
function mostOn(aircraft: LoadedAircraft, emptyKg: number, { fills, aboard }: Filling): number {
  const isMet = ({ maximumOn }: JointLimits): boolean =>
    [...aboard].every(([id, kg]) => isAtMost(kg, maximumOn.get(id) ?? kg));
  const joint = jointLimits(withoutMassLimits(aircraft, emptyKg), emptyKg);
  const sets = joint.filter(isMet).map(({ limits, maximumOn }) => {
    const rooms = limits.map(({ weights, maximumKg }) => ({
      weights,
      bound: maximumKg - [...aboard].reduce((sum, [id, kg]) => sum + (weights.get(id) ?? 0) * kg, 0),
    }));
    const shortKg = Math.min(0, ...rooms.map(({ bound }) => bound));
    if (shortKg < 0) return shortKg;
    const line = cheapestLine({
      upper: fills.map(({ id, maximumKg }) => Math.min(maximumKg, maximumOn.get(id) ?? maximumKg)),
      costs: fills.map(() => 0),
      rows: rooms.map(({ weights, bound }) => ({ coefficients: fills.map(({ id }) => weights.get(id) ?? 0), bound })),
    });
    return (line.at(-1) ?? []).reduce((sum, kg) => sum + kg, 0);
  });
  return Math.max(...sets);
}

/** Places for crew and baggage, with every tank full. */
function besideFullTanks(aircraft: LoadedAircraft): Filling {
  return {
    fills: loadPlaces(aircraft),
    aboard: new Map(tanksOf(aircraft).map((tank) => [tank.id, usableFuel(tank, tank.capacityL).massKg])),
  };
}

/** Every place and every tank. */
function everywhere(aircraft: LoadedAircraft): Filling {
  const tanks = tanksAndWaterOf(aircraft).map((tank) => ({
    id: tank.id,
    maximumKg: Math.max(0, usableFuel(tank, tank.capacityL).massKg),
  }));
  return { fills: [...loadPlaces(aircraft), ...tanks], aboard: new Map() };
}

/** An external load that may go beyond the maximum mass does not count to the useful load. */
function loadPlaces(aircraft: LoadedAircraft): Filling['fills'] {
  return loadStationsOf(aircraft)
    .filter(({ kind }) => kind !== 'external' || aircraft.maximumMassWithExternalLoadKg === undefined)
    .map(({ id, maximumMassKg }) => ({ id, maximumKg: maximumMassKg }));
}
