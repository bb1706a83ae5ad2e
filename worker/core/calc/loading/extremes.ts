import type { LoadedAircraft } from '../../record/visit.ts';
import { cgMm, type MassMoment } from '../mass/mass-moment.ts';
import { isAtLeast } from '../numbers/limit-met.ts';
import { boundary, type Loading } from './boundary.ts';
import type { Envelope } from './envelope.ts';
import { type LoadSpaceOptions, loadSpaces } from './load-space.ts';
import { loadingOf } from './loading-of.ts';
import type { Extremes, Margin } from './loading-result.ts';
import { worstMargins } from './margin.ts';
import type { LoadSpace } from './space.ts';

export type { Extreme, Extremes } from './loading-result.ts';

/** Error of a centre of gravity that is left to the chords of tanks with a table of arms: below any printed digit. */
const CLOSE_MM = 0.02;

/** Most sets of loads that are tried, our choice: far more than tanks need; beyond it the bound itself is reported, which is the safe side. */
const MAX_TRIED = 2000;

/**
 * Returns the exact extremes of all permitted loadings, and their worst margins to the envelope.
 *
 * Along a straight boundary the centre of gravity M/m is monotone, so the extremes lie on corners. Where tanks with a
 * table of arms are followed by chords, the error of the chords gives a bound of each extreme; sets of loads whose bound
 * is worse than the worst loading found are halved, until none is worse by more than 0.02 mm.
 *
 * @returns undefined if no load is permitted: the minimum one is already over the maximum mass or another limit
 * @source the adverse-loading check of AC 43.13-1B ch. 10, solved exactly instead of by trial loadings; branch and bound
 *   (A. Land, A. Doig, 1960), from memory; checked against a fine grid by tests/core/calc/loading/bends.test.ts
 */
export function loadingExtremes(
  aircraft: LoadedAircraft,
  options: LoadSpaceOptions,
  envelope?: Envelope,
): Extremes | undefined {
  const exact = exactly(aircraft, options.empty);
  const worst = new Map<Quantity, Candidate>();
  const keep = (candidate: Candidate): void => {
    const known = worst.get(candidate.of);
    if (!known || candidate.value < known.value) worst.set(candidate.of, candidate);
  };
  const undecided = halvedUntil(loadSpaces(aircraft, options), (spaces) => {
    const seen = spaces.map((space) => ({ space, candidates: candidatesIn(space, envelope, exact) }));
    for (const { candidates } of seen) for (const candidate of candidates) keep(candidate);
    const isDoubtful = ({ of, bound }: Candidate): boolean => bound < (worst.get(of)?.value ?? bound) - CLOSE_MM;
    return seen.filter(({ candidates }) => candidates.some(isDoubtful)).map(({ space }) => space);
  });
  for (const space of undecided)
    for (const candidate of candidatesIn(space, envelope, exact)) keep({ ...candidate, value: candidate.bound });
  const [forward, aft] = [worst.get('forward-arm'), worst.get('aft-arm')];
  if (!forward || !aft) return undefined;
  return {
    forward: { loading: forward.loading, armMm: forward.value },
    aft: { loading: aft.loading, armMm: -aft.value },
    margins: [...worst.values()].flatMap(({ of, value, loading, limit }) =>
      of === 'forward-arm' || of === 'aft-arm' ? [] : [{ side: of, margin: value, loading, limit }],
    ),
  };
}

/**
 * Whether every permitted loading is inside an envelope, and any is permitted. Quicker than the extremes, because nothing
 * is followed further than to the sign of a margin.
 *
 * @source as `loadingExtremes`
 */
export function areAllInside(aircraft: LoadedAircraft, options: LoadSpaceOptions, envelope: Envelope): boolean {
  const exact = exactly(aircraft, options.empty);
  let [isAnyLoaded, isAnyOutside] = [false, false];
  const undecided = halvedUntil(loadSpaces(aircraft, options), (spaces) => {
    const seen = spaces.map((space) => ({ space, candidates: candidatesIn(space, envelope, exact) }));
    const all = seen.flatMap(({ candidates }) => candidates);
    isAnyLoaded ||= all.length > 0;
    isAnyOutside ||= all.some((candidate) => isMargin(candidate) && !isAtLeast(candidate.value, 0));
    const isDoubtful = (candidate: Candidate): boolean => isMargin(candidate) && !isAtLeast(candidate.bound, 0);
    return isAnyOutside ? [] : seen.filter(({ candidates }) => candidates.some(isDoubtful)).map(({ space }) => space);
  });
  return isAnyLoaded && !isAnyOutside && undecided.length === 0;
}

/** Halves the sets of loads in doubt until none is left; returns those still in doubt after `MAX_TRIED`. */
function halvedUntil(
  spaces: readonly LoadSpace[],
  doubtfulOf: (spaces: readonly LoadSpace[]) => LoadSpace[],
): LoadSpace[] {
  let open = [...spaces];
  for (let tried = open.length; open.length > 0; tried += open.length) {
    const doubtful = doubtfulOf(open);
    if (tried > MAX_TRIED) return doubtful;
    open = doubtful.flatMap(({ halves }) => halves());
  }
  return [];
}

const isMargin = ({ of }: Candidate): boolean => of !== 'forward-arm' && of !== 'aft-arm';

type Quantity = 'forward-arm' | 'aft-arm' | Margin['side'];

/** A loading that may be the worst of all. */
interface Candidate {
  of: Quantity;
  /** Arm, arm with the other sign, or margin of the loading: the lower, the worse. */
  value: number;
  /** No loading of the set is worse. */
  bound: number;
  loading: Loading;
  limit: number;
}

function candidatesIn(
  space: LoadSpace,
  envelope: Envelope | undefined,
  exact: (loading: Loading) => Loading,
): Candidate[] {
  return (['forward', 'aft'] as const).flatMap((side): Candidate[] => {
    const line = boundary(space, side);
    const [lightest] = line;
    if (!lightest) return [];
    const sign = side === 'forward' ? 1 : -1;
    const offKgMm = side === 'forward' ? space.belowKgMm : space.aboveKgMm;
    const boundOf = ({ massKg, momentKgMm }: Loading): number => (sign * momentKgMm - offKgMm) / massKg;
    const outermost = line.reduce((best, each) => (sign * cgMm(each) < sign * cgMm(best) ? each : best), lightest);
    const extreme: Candidate = {
      of: side === 'forward' ? 'forward-arm' : 'aft-arm',
      value: sign * cgMm(exact(outermost)),
      bound: Math.min(...line.map(boundOf)),
      loading: exact(outermost),
      limit: Number.NaN,
    };
    const margins = envelope ? worstMargins(line, envelope, [side]) : [];
    return [
      extreme,
      ...margins.map(({ side: of, margin, loading, limit }): Candidate => {
        if (of === 'below' || of === 'above')
          return { of, value: margin, bound: margin, loading: exact(loading), limit };
        const at = exact(loading);
        const value = margin + sign * (cgMm(at) - cgMm(loading));
        return { of, value, bound: margin - offKgMm / lightest.massKg, loading: at, limit };
      }),
    ];
  });
}

/** Returns a loading with the exact moments of its tables of arms, and not those of the chords that follow them. */
function exactly(aircraft: LoadedAircraft, empty: MassMoment): (loading: Loading) => Loading {
  const isTabled = aircraft.stations.some((station) => 'armByVolume' in station && station.armByVolume !== undefined);
  return (loading) => (isTabled ? loadingOf(aircraft, empty, loading.load) : loading);
}
