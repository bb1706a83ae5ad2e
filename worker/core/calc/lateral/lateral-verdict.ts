import type { LoadedAircraft } from '../../record/visit.ts';
import type { Loading } from '../loading/boundary.ts';
import { loadingOf } from '../loading/loading-of.ts';
import { worstMargins } from '../loading/margin.ts';
import { cgMm } from '../mass/mass-moment.ts';
import { ACROSS, turned } from './across.ts';
import { lateralLimitsOf } from './lateral-envelope.ts';

/** Side and margin of a path of loadings to the lateral limits, in mm, negative beyond them. */
export interface LateralVerdict {
  side: 'left' | 'right';
  marginMm: number;
}

/**
 * Judges a path of loadings laterally.
 *
 * @param lateralKgMm lateral moment of the empty aircraft
 * @returns undefined without usable lateral limits
 * @source common practice, no source: distance from the sides of a polygon; checked by
 *   tests/core/calc/lateral/both-axes.test.ts
 */
export function lateralJudge(
  aircraft: LoadedAircraft,
  empty: { massKg: number; lateralKgMm: number },
): ((path: readonly Loading[]) => LateralVerdict | undefined) | undefined {
  const limits = aircraft.lateralEnvelope && lateralLimitsOf(aircraft.lateralEnvelope);
  if (!limits) return undefined;
  const turnedAircraft = turned(aircraft, ACROSS);
  const across = (loading: Loading): Loading =>
    loadingOf(turnedAircraft, { massKg: empty.massKg, momentKgMm: empty.lateralKgMm }, loading.load);
  return (path) => {
    if (limits.by === 'mass') {
      const margins = worstMargins(path.map(across), limits.envelope).filter(
        ({ side }) => side === 'forward' || side === 'aft',
      );
      const worst = margins.sort((a, b) => a.margin - b.margin)[0];
      return worst && { side: worst.side === 'forward' ? 'left' : 'right', marginMm: worst.margin };
    }
    // Arm and lateral arm move along straight lines between the points of a path, so its points bound a convex area.
    const worst = path
      .flatMap((loading) => {
        const [armMm, lateralMm] = [cgMm(loading), cgMm(across(loading))];
        return limits.edges.map(({ along, across: sideways, offsetMm }) => ({
          side: sideways < 0 ? ('left' as const) : ('right' as const),
          marginMm: offsetMm - along * armMm - sideways * lateralMm,
        }));
      })
      .sort((a, b) => a.marginMm - b.marginMm)[0];
    return worst;
  };
}
