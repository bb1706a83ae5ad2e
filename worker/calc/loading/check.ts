import type { LoadedAircraft } from '../../visit/visit.ts';
import { tanksOf, usableFuel } from '../fuel.ts';
import type { MassMoment } from '../mass-moment.ts';
import type { Loading } from './boundary.ts';
import { burnPathOf } from './burn-path.ts';
import type { Envelope } from './envelope.ts';
import { loadStationsOf } from './load-space.ts';
import { loadingOf } from './loading-of.ts';
import { judgeOf, type Verdict } from './verdict.ts';

/** One change, of one station alone, that brings a loading inside. */
export interface Cure {
  station: string;
  /** Mass to take out (negative) or put in. */
  byKg: number;
}

export interface LoadingCheck {
  takeOff: Loading;
  /** From take-off until the fuel is gone. */
  path: Loading[];
  /** Where the planned burn ends; undefined when more is to be burnt than is aboard. */
  landing: Loading | undefined;
  verdict: Verdict;
  /** Empty when the loading is inside, or when no single change helps. */
  cures: Cure[];
}

/** How finely a cure is found, in kg. */
const STEP_KG = 0.5;

/**
 * Judges what is to be flown, with the same code as the pack.
 *
 * @param load kg by station; usable fuel for a tank
 * @param burnKg fuel to be burnt on the flight
 * @source common practice, no source
 */
export function checkLoading(
  aircraft: LoadedAircraft,
  empty: MassMoment,
  {
    load,
    burnKg,
    envelope,
  }: { load: Readonly<Record<string, number>>; burnKg: number; envelope?: Envelope | undefined },
): LoadingCheck {
  const judge = judgeOf(aircraft, envelope);
  const takeOff = loadingOf(aircraft, empty, load);
  const verdict = judge(takeOff);
  const judgeLoad = (changed: Readonly<Record<string, number>>): Verdict => judge(loadingOf(aircraft, empty, changed));
  return {
    takeOff,
    path: burnPathOf(aircraft)(takeOff),
    landing: afterBurning(burnPathOf(aircraft)(takeOff), burnKg),
    verdict,
    cures: verdict.state === 'inside' ? [] : curesOf(aircraft, load, judgeLoad),
  };
}

/** The point of a burn path at which so much is burnt. */
function afterBurning(path: readonly Loading[], burnKg: number): Loading | undefined {
  const [start] = path;
  if (!start || burnKg < 0) return undefined;
  const wantedKg = start.massKg - burnKg;
  for (const [index, to] of path.entries()) {
    const from = path[index - 1] ?? to;
    if (to.massKg > wantedKg) continue;
    const share = from.massKg === to.massKg ? 1 : (from.massKg - wantedKg) / (from.massKg - to.massKg);
    return { ...to, massKg: wantedKg, momentKgMm: from.momentKgMm + share * (to.momentKgMm - from.momentKgMm) };
  }
  return undefined;
}

/** For each station the least change, of it alone, that helps; people are not taken out or put in. */
function curesOf(
  aircraft: LoadedAircraft,
  load: Readonly<Record<string, number>>,
  judge: (load: Readonly<Record<string, number>>) => Verdict,
): Cure[] {
  const baggage = loadStationsOf(aircraft).filter(({ kind }) => kind === 'baggage');
  const places = [
    ...baggage.map(({ id, maximumMassKg }) => ({ id, mostKg: maximumMassKg })),
    ...tanksOf(aircraft).map((tank) => ({ id: tank.id, mostKg: usableFuel(tank, tank.capacityL).massKg })),
  ];
  return places.flatMap(({ id, mostKg }): Cure[] => {
    const nowKg = load[id] ?? 0;
    const helps = (toKg: number): boolean => judge({ ...load, [id]: toKg }).state === 'inside';
    for (let byKg = STEP_KG; byKg <= Math.max(nowKg, mostKg); byKg += STEP_KG) {
      if (nowKg - byKg >= -STEP_KG && helps(Math.max(0, nowKg - byKg)))
        return [{ station: id, byKg: Math.max(-nowKg, -byKg) }];
      if (nowKg + byKg <= mostKg && helps(nowKg + byKg)) return [{ station: id, byKg }];
    }
    return [];
  });
}
