import { between, type Loading, type Side } from './boundary.ts';
import { armOn, type Envelope, type LimitPiece, limitsAt } from './envelope.ts';

/** The place where a set of loadings comes nearest to a limit, or goes furthest beyond it. */
export interface Margin {
  side: Side | 'below' | 'above';
  /** Arm between the centre of gravity and the limit, positive inside; for `below` and `above`, mass in kg. */
  margin: number;
  loading: Loading;
  /** The limit there: arm in mm, or mass in kg. */
  limit: number;
}

/**
 * The worst margin to both limits along straight lines of loadings.
 *
 * On a line the moment is linear in mass, M = α + β·m, and so is a piece of the limit, F = γ + δ·m. The margin
 * α/m + β − γ − δ·m is stationary at m = √(−α/δ) alone, so its worst value is there or at an end: no search, no step.
 */
export function worstMargins(
  line: readonly Loading[],
  envelope: Envelope,
  sides: readonly Side[] = ['forward', 'aft'],
): Margin[] {
  const margins = sides.map((side) => worstToLimit(line, envelope, side)).filter((margin) => margin !== undefined);
  return [...margins, ...massMargins(line, envelope)];
}

function worstToLimit(line: readonly Loading[], envelope: Envelope, side: Side): Margin | undefined {
  const sign = side === 'forward' ? 1 : -1;
  let worst = { margin: Number.POSITIVE_INFINITY, index: -1, massKg: 0, limit: 0 };
  const consider = (index: number, massKg: number, momentKgMm: number, limit: number): void => {
    const margin = sign * (momentKgMm / massKg - limit);
    if (margin < worst.margin) worst = { margin, index, massKg, limit };
  };
  for (const [index, to] of line.entries()) {
    const from = line[index - 1] ?? to;
    if (from.massKg === to.massKg) {
      const limits = limitsAt(envelope, to.massKg);
      if (limits) consider(index, to.massKg, to.momentKgMm, side === 'forward' ? limits.forwardMm : limits.aftMm);
      continue;
    }
    const beta = (to.momentKgMm - from.momentKgMm) / (to.massKg - from.massKg);
    const alpha = from.momentKgMm - beta * from.massKg;
    const [lightKg, heavyKg] = from.massKg < to.massKg ? [from.massKg, to.massKg] : [to.massKg, from.massKg];
    for (const piece of envelope[side]) {
      const lowKg = Math.max(lightKg, piece.fromKg);
      const highKg = Math.min(heavyKg, piece.toKg);
      if (!(highKg > lowKg)) continue;
      const considerAt = (massKg: number): void => consider(index, massKg, alpha + beta * massKg, armOn(piece, massKg));
      considerAt(lowKg);
      considerAt(highKg);
      const stationaryKg = Math.sqrt(-alpha / slopeOf(piece));
      if (stationaryKg > lowKg && stationaryKg < highKg) considerAt(stationaryKg);
    }
  }
  const to = line[worst.index];
  if (!to) return undefined;
  const from = line[worst.index - 1] ?? to;
  const share = to.massKg === from.massKg ? 1 : (worst.massKg - from.massKg) / (to.massKg - from.massKg);
  return { side, margin: worst.margin, limit: worst.limit, loading: between(from, to, share) };
}

/** Arm that a piece of a limit gains with each kg. */
function slopeOf({ fromKg, toKg, fromMm, toMm }: LimitPiece): number {
  return (toMm - fromMm) / (toKg - fromKg);
}

/** Masses outside the span of the envelope: its limits say nothing there, so they count as outside. */
function massMargins(line: readonly Loading[], { lowestKg, highestKg }: Envelope): Margin[] {
  return line.flatMap((loading): Margin[] => {
    if (loading.massKg < lowestKg)
      return [{ side: 'below', margin: loading.massKg - lowestKg, loading, limit: lowestKg }];
    if (loading.massKg > highestKg)
      return [{ side: 'above', margin: highestKg - loading.massKg, loading, limit: highestKg }];
    return [];
  });
}
