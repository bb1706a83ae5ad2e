import type { LoadedAircraft } from '../../record/visit.ts';
import type { MassMoment } from '../mass/mass-moment.ts';
import { isAtLeast, isAtMost } from '../numbers/limit-met.ts';
import type { Loading } from './boundary.ts';
import { burnPathOf } from './burn-path.ts';
import { tanksOf, usableFuel } from './fuel.ts';
import { loadStationsOf } from './load-space.ts';
import { loadingOf } from './loading-of.ts';
import { type JudgedBy, judgeOf, type Verdict } from './verdict.ts';

/** One change, of one station alone, that brings a loading inside. */
export interface Remedy {
  station: string;
  /** Mass to take out (negative) or put in. */
  byKg: number;
}

/** What is said of a flight: of its loading, and of the fuel that it burns. */
export type FlightVerdict =
  | Verdict
  /** The aircraft has tanks, and no usable fuel is in them. */
  | { state: 'no-fuel' }
  | { state: 'too-little-fuel'; shortKg: number }
  /** The planned burn takes all usable fuel. */
  | { state: 'no-reserve' };

export interface LoadingCheck {
  takeOff: Loading;
  /** From take-off until the fuel is gone. */
  path: Loading[];
  /** Where the planned burn ends; undefined when more is to be burnt than is aboard. */
  landing: Loading | undefined;
  verdict: FlightVerdict;
  /**
   * Empty when the loading is inside, when nobody flies it, or when no single change helps; also where fuel is wanting: how much is
   * enough is the pilot's to say.
   */
  cures: Remedy[];
}

/** What is to be flown. */
export interface Flight extends JudgedBy {
  /** kg by station; usable fuel for a tank. */
  load: Readonly<Record<string, number>>;
  /** Fuel to be burnt on the flight. */
  burnKg: number;
  /** How finely a cure is found, in kg by station: a half of the unit that its field is typed in. @default 0.5 */
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
 * Judges what is to be flown, with the same code as the pack: from take-off until the fuel is gone, and at the mass at which the
 * planned burn ends, which the maximum landing mass bounds. An aircraft with tanks takes off with usable fuel, and lands with some left.
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

/** What is wrong with the usable fuel of the flight; undefined where nothing is, or where the aircraft has no tank. */
function fuelVerdict(aircraft: LoadedAircraft, path: readonly Loading[], burnKg: number): FlightVerdict | undefined {
  if (tanksOf(aircraft).length === 0) return undefined;
  const [takeOffKg = 0, withoutFuelKg = 0] = [path[0]?.massKg, path.at(-1)?.massKg];
  const fuelKg = takeOffKg - withoutFuelKg;
  if (isAtMost(fuelKg, 0)) return { state: 'no-fuel' };
  if (!isAtMost(burnKg, fuelKg)) return { state: 'too-little-fuel', shortKg: burnKg - fuelKg };
  return isAtLeast(burnKg, fuelKg) ? { state: 'no-reserve' } : undefined;
}

/** What is wrong with where the planned burn ends; undefined where nothing is. */
function landingVerdict(
  { maximumLandingMassKg = Number.POSITIVE_INFINITY }: LoadedAircraft,
  landing: Loading | undefined,
): FlightVerdict | undefined {
  if (!landing || isAtMost(landing.massKg, maximumLandingMassKg)) return undefined;
  return { state: 'limit-exceeded', exceeded: { kind: 'landing-mass' }, overKg: landing.massKg - maximumLandingMassKg };
}

/** The point of a burn path at which so much is burnt. */
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

/** For each station the least change, of it alone, that helps; people are not taken out or put in. */
function curesOf(
  aircraft: LoadedAircraft,
  load: Readonly<Record<string, number>>,
  stepsKg: Readonly<Record<string, number>>,
  helps: (load: Readonly<Record<string, number>>) => boolean,
): Remedy[] {
  const baggage = loadStationsOf(aircraft).filter(({ kind }) => kind === 'baggage');
  const places = [
    ...baggage.map(({ id, maximumMassKg }) => ({ id, maxKg: maximumMassKg })),
    ...tanksOf(aircraft).map((tank) => ({ id: tank.id, maxKg: usableFuel(tank, tank.capacityL).massKg })),
  ];
  return places.flatMap(({ id, maxKg }): Remedy[] => {
    const nowKg = load[id] ?? 0;
    const stepKg = stepsKg[id] ?? STEP_KG;
    const withKg = (toKg: number): boolean => helps({ ...load, [id]: toKg });
    // What is above the limit of its place has to go in any case.
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
