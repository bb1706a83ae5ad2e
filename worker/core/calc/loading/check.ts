import type { LoadedAircraft } from '../../record/visit.ts';
import type { MassMoment } from '../mass/mass-moment.ts';
import { isAtLeast, isAtMost } from '../numbers/limit-met.ts';
import type { Loading } from './boundary.ts';
import { burnPathOf } from './burn-path.ts';
import { tanksOf, usableFuel } from './fuel.ts';
import { isBaggagePlace, loadStationsOf } from './load-space.ts';
import { loadingOf } from './loading-of.ts';
import { type JudgedBy, judgeOf, type Verdict } from './verdict.ts';

/** A change of only one station that brings a loading inside the limits. */
export interface Remedy {
  station: string;
  /** Mass to remove (negative) or add. */
  byKg: number;
}

/** Verdict on a flight: on its loading, and on the fuel that it burns. */
export type FlightVerdict =
  | Verdict
  /** The aircraft has tanks, and they have no usable fuel. */
  | { state: 'no-fuel' }
  | { state: 'too-little-fuel'; shortKg: number }
  /** The planned burn takes all usable fuel. */
  | { state: 'no-reserve' };

export interface LoadingCheck {
  takeOff: Loading;
  /** From take-off until no usable fuel is left. */
  path: Loading[];
  /** Loading at the end of the planned burn; undefined if more is planned than is aboard. */
  landing: Loading | undefined;
  verdict: FlightVerdict;
  /**
   * Empty if the loading is inside, if nobody flies it, or if no single change helps; also if fuel is short: the
   * required fuel is the pilot's decision.
   */
  cures: Remedy[];
}

/** A planned flight. */
export interface Flight extends JudgedBy {
  /** kg by station; usable fuel for a tank. */
  load: Readonly<Record<string, number>>;
  /** Fuel used on the flight. */
  burnKg: number;
  /** Resolution of a remedy, in kg by station: half of the unit that its field is entered in. @default 0.5 */
  stepsKg?: Readonly<Record<string, number>>;
}

const STEP_KG = 0.5;

const HAVE_NO_CURE: ReadonlySet<FlightVerdict['state']> = new Set([
  'inside',
  'no-fuel',
  'too-little-fuel',
  'no-reserve',
]);

/**
 * Checks a planned flight, with the same code as the pack: from take-off until no usable fuel is left, and at the mass
 * at the end of the planned burn, which the maximum landing mass bounds. An aircraft with tanks takes off with usable
 * fuel, and lands with some left.
 *
 * @source common practice, no source
 */
export function checkLoading(aircraft: LoadedAircraft, empty: MassMoment, flight: Flight): LoadingCheck {
  const { load, burnKg, stepsKg = {} } = flight;
  const judge = judgeOf(aircraft, flight);
  const burn = burnPathOf(aircraft);
  const checked = (changed: Readonly<Record<string, number>>): Omit<LoadingCheck, 'cures'> => {
    const takeOff = loadingOf(aircraft, empty, changed);
    const path = burn(takeOff);
    const landing = afterBurning(path, burnKg);
    const verdict = judge(takeOff);
    const ofFlight =
      verdict.state === 'inside'
        ? (fuelVerdict(aircraft, path, burnKg) ?? landingVerdict(aircraft, landing))
        : undefined;
    return { takeOff, path, landing, verdict: ofFlight ?? verdict };
  };
  const check = checked(load);
  const helps = (changed: Readonly<Record<string, number>>): boolean => checked(changed).verdict.state === 'inside';
  return { ...check, cures: HAVE_NO_CURE.has(check.verdict.state) ? [] : curesOf(aircraft, load, stepsKg, helps) };
}

/** Returns the verdict on the usable fuel of the flight; undefined if it is sufficient, or if the aircraft has no tank. */
function fuelVerdict(aircraft: LoadedAircraft, path: readonly Loading[], burnKg: number): FlightVerdict | undefined {
  if (tanksOf(aircraft).length === 0) return undefined;
  const [takeOffKg = 0, withoutFuelKg = 0] = [path[0]?.massKg, path.at(-1)?.massKg];
  const fuelKg = takeOffKg - withoutFuelKg;
  if (isAtMost(fuelKg, 0)) return { state: 'no-fuel' };
  if (!isAtMost(burnKg, fuelKg)) return { state: 'too-little-fuel', shortKg: burnKg - fuelKg };
  return isAtLeast(burnKg, fuelKg) ? { state: 'no-reserve' } : undefined;
}

/** Returns the verdict on the end of the planned burn; undefined if it is within limits. */
function landingVerdict(
  { maximumLandingMassKg = Number.POSITIVE_INFINITY }: LoadedAircraft,
  landing: Loading | undefined,
): FlightVerdict | undefined {
  if (!landing || isAtMost(landing.massKg, maximumLandingMassKg)) return undefined;
  return { state: 'limit-exceeded', exceeded: { kind: 'landing-mass' }, overKg: landing.massKg - maximumLandingMassKg };
}

/** Returns the point of a burn path after a given burn. */
function afterBurning(path: readonly Loading[], burnKg: number): Loading | undefined {
  const [start] = path;
  if (!start || burnKg < 0) return undefined;
  const wantedKg = start.massKg - burnKg;
  for (const [index, to] of path.entries()) {
    const from = path[index - 1] ?? to;
    if (!isAtMost(to.massKg, wantedKg)) continue;
    const share = from.massKg === to.massKg ? 1 : (from.massKg - wantedKg) / (from.massKg - to.massKg);
    return { ...to, massKg: wantedKg, momentKgMm: from.momentKgMm + share * (to.momentKgMm - from.momentKgMm) };
  }
  return undefined;
}

/** Returns for each station the smallest change of it that helps; people are neither added nor removed. */
function curesOf(
  aircraft: LoadedAircraft,
  load: Readonly<Record<string, number>>,
  stepsKg: Readonly<Record<string, number>>,
  helps: (load: Readonly<Record<string, number>>) => boolean,
): Remedy[] {
  const baggage = loadStationsOf(aircraft).filter(isBaggagePlace);
  const places = [
    ...baggage.map(({ id, maximumMassKg }) => ({ id, maxKg: maximumMassKg })),
    ...tanksOf(aircraft).map((tank) => ({ id: tank.id, maxKg: usableFuel(tank, tank.capacityL).massKg })),
  ];
  return places.flatMap(({ id, maxKg }): Remedy[] => {
    const nowKg = load[id] ?? 0;
    const stepKg = stepsKg[id] ?? STEP_KG;
    const withKg = (toKg: number): boolean => helps({ ...load, [id]: toKg });
    // A mass above the station's own limit has to go in any case.
    const first = Math.max(1, Math.ceil((nowKg - maxKg) / stepKg));
    const last = Math.ceil(Math.max(nowKg, maxKg) / stepKg);
    for (let step = first; step <= last; step++) {
      const byKg = Math.min(step * stepKg, nowKg);
      if (byKg > 0 && withKg(nowKg - byKg)) return [{ station: id, byKg: -byKg }];
      if (nowKg + step * stepKg <= maxKg && withKg(nowKg + step * stepKg))
        return [{ station: id, byKg: step * stepKg }];
    }
    return [];
  });
}
