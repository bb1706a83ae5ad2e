import type { LoadedAircraft } from '../../record/visit.ts';
import { loadingExtremes } from '../loading/extremes.ts';
import type { LoadSpaceOptions } from '../loading/load-space.ts';
import { ACROSS, turned } from './across.ts';
import type { LateralLimits } from './lateral-envelope.ts';
import type { LateralMargin } from './lateral-result.ts';

/** Moments of the empty aircraft about datum and centre line. */
export interface EmptyMoments {
  massKg: number;
  momentKgMm: number;
  lateralKgMm: number;
}

type Options = Omit<LoadSpaceOptions, 'empty'>;

/**
 * Returns the smallest margins of all permitted loadings to the lateral limits, exactly: every limit is linear in the
 * loads once the arms are taken along its normal.
 *
 * @source our own derivation, in this comment; checked against every corner by tests/core/calc/lateral/both-axes.test.ts
 */
export function lateralMargins(
  aircraft: LoadedAircraft,
  empty: EmptyMoments,
  limits: LateralLimits,
  options: Options,
): LateralMargin[] {
  const { massKg, momentKgMm, lateralKgMm } = empty;
  if (limits.by === 'mass') {
    const across = { ...options, empty: { massKg, momentKgMm: lateralKgMm } };
    const margins = loadingExtremes(turned(aircraft, ACROSS), across, limits.envelope)?.margins ?? [];
    return margins.flatMap(({ side, margin, loading }): LateralMargin[] =>
      side === 'forward' || side === 'aft' ? [{ side: side === 'forward' ? 'left' : 'right', margin, loading }] : [],
    );
  }
  const ofEdges = limits.edges.flatMap((edge): LateralMargin[] => {
    const along = edge.along * momentKgMm + edge.across * lateralKgMm;
    const most = loadingExtremes(turned(aircraft, edge), { ...options, empty: { massKg, momentKgMm: along } })?.aft;
    // An edge across the aircraft is a longitudinal limit, which the envelope has too.
    if (!most || edge.across === 0) return [];
    return [{ side: edge.across < 0 ? 'left' : 'right', margin: edge.offsetMm - most.armMm, loading: most.loading }];
  });
  return SIDES.flatMap((side) => worstOf(ofEdges.filter((margin) => margin.side === side)));
}

const SIDES = ['left', 'right'] as const;

function worstOf(margins: readonly LateralMargin[]): LateralMargin[] {
  return margins.toSorted((a, b) => a.margin - b.margin).slice(0, 1);
}
