import type { LoadedAircraft } from '../../record/visit.ts';
import { cgMm, type MassMoment } from '../mass/mass-moment.ts';
import { boundary, type Loading, type Side } from './boundary.ts';
import type { Envelope } from './envelope.ts';
import { type LoadSpaceOptions, loadSpaces } from './load-space.ts';
import { loadingOf } from './loading-of.ts';
import type { Extreme, Extremes, Margin } from './loading-result.ts';
import { worstMargins } from './margin.ts';

export type { Extreme, Extremes } from './loading-result.ts';

/**
 * Returns the exact extremes of all permitted loadings, and their worst margins to the envelope.
 *
 * Along a straight boundary the centre of gravity M/m is monotone, so the extremes lie on corners.
 *
 * @returns undefined if the min. permitted load is already over the maximum mass or another limit
 * @source the adverse-loading check of AC 43.13-1B ch. 10, solved exactly instead of by trial loadings
 */
export function loadingExtremes(
  aircraft: LoadedAircraft,
  options: LoadSpaceOptions,
  envelope?: Envelope,
): Extremes | undefined {
  const lines = { forward: [] as Loading[][], aft: [] as Loading[][] };
  for (const space of loadSpaces(aircraft, options)) {
    for (const side of ['forward', 'aft'] as const) {
      const line = boundary(space, side);
      if (line.length > 0) lines[side].push(line);
    }
  }
  const forward = outermost(lines.forward.flat(), 'forward');
  const aft = outermost(lines.aft.flat(), 'aft');
  if (!forward || !aft) return undefined;
  const margins = envelope ? worstOfAll(lines, envelope) : [];
  const exact = exactly(aircraft, options.empty);
  return {
    forward: exactExtreme(forward, exact),
    aft: exactExtreme(aft, exact),
    margins: margins.map((each) => exactMargin(each, exact)),
  };
}

/** Returns a loading with the exact moments of its tables of arms, and not those of the chords that follow them. */
function exactly(aircraft: LoadedAircraft, empty: MassMoment): (loading: Loading) => Loading {
  const isTabled = aircraft.stations.some((station) => 'armByVolume' in station && station.armByVolume !== undefined);
  return (loading) => (isTabled ? loadingOf(aircraft, empty, loading.load) : loading);
}

function exactExtreme({ loading }: Extreme, exact: (loading: Loading) => Loading): Extreme {
  const at = exact(loading);
  return { loading: at, armMm: cgMm(at) };
}

function exactMargin(margin: Margin, exact: (loading: Loading) => Loading): Margin {
  const { side, loading } = margin;
  const at = exact(loading);
  if (side === 'below' || side === 'above') return { ...margin, loading: at };
  const movedMm = cgMm(at) - cgMm(loading);
  return { ...margin, loading: at, margin: margin.margin + (side === 'forward' ? movedMm : -movedMm) };
}

function outermost(loadings: readonly Loading[], side: Side): Extreme | undefined {
  let best: Extreme | undefined;
  for (const loading of loadings) {
    const armMm = cgMm(loading);
    if (!best || (side === 'forward' ? armMm < best.armMm : armMm > best.armMm)) best = { loading, armMm };
  }
  return best;
}

function worstOfAll(lines: Record<Side, Loading[][]>, envelope: Envelope): Margin[] {
  const worst = new Map<Margin['side'], Margin>();
  for (const side of ['forward', 'aft'] as const) {
    for (const margin of lines[side].flatMap((line) => worstMargins(line, envelope, [side]))) {
      const known = worst.get(margin.side);
      if (!known || margin.margin < known.margin) worst.set(margin.side, margin);
    }
  }
  return [...worst.values()];
}
