import { isAtLeast, isAtMost } from '../numbers/limit-met.ts';
import { between, type Loading, type Side } from './boundary.ts';
import { armOn, type Envelope, type LimitPiece } from './envelope.ts';
import type { Margin } from './loading-result.ts';

export type { Margin } from './loading-result.ts';

/**
 * Returns the worst margin to both limits along straight lines of loadings.
 *
 * On a line the moment is linear in mass, M = α + β·m, and so is a piece of the limit, F = γ + δ·m. The margin α/m + β
 * − γ − δ·m is stationary only at m = √(−α/δ), so its worst value is there or at an end: no search, no step.
 *
 * @source our own derivation, in this comment; checked against dense sampling by tests/core/calc/loading/margin.test.ts
 */
export function worstMargins(
  line: readonly Loading[],
  envelope: Envelope,
  sides: readonly Side[] = ['forward', 'aft'],
): Margin[] {
  const margins = sides.map((side) => worstToLimit(line, envelope, side)).filter((margin) => margin !== undefined);
  return [...margins, ...massMargins(line, envelope)];
}

/** Runs thousands of times for one loading sheet: plain numbers, no lists and no inner functions. */
function worstToLimit(line: readonly Loading[], envelope: Envelope, side: Side): Margin | undefined {
  const sign = side === 'forward' ? 1 : -1;
  let worst = Number.POSITIVE_INFINITY;
  let [worstIndex, worstKg, worstLimitMm] = [-1, 0, 0];
  for (let index = 0; index < line.length; index++) {
    const to = line[index] as Loading;
    const from = line[index - 1] ?? to;
    // A line of only one point has no slope and needs none.
    const beta = from.massKg === to.massKg ? 0 : (to.momentKgMm - from.momentKgMm) / (to.massKg - from.massKg);
    const alpha = to.momentKgMm - beta * to.massKg;
    const lightKg = onto(envelope, Math.min(from.massKg, to.massKg));
    const heavyKg = onto(envelope, Math.max(from.massKg, to.massKg));
    for (const piece of envelope.reach[side]) {
      const lowKg = Math.max(lightKg, piece.fromKg);
      const highKg = Math.min(heavyKg, piece.toKg);
      if (lowKg > highKg) continue;
      const stationaryKg = Math.sqrt(-alpha / slopeOf(piece));
      const isBetween = stationaryKg > lowKg && stationaryKg < highKg;
      for (let candidate = 0; candidate < (isBetween ? 3 : 2); candidate++) {
        const massKg = candidate === 0 ? lowKg : candidate === 1 ? highKg : stationaryKg;
        const limitMm = armOn(piece, massKg);
        const margin = sign * (alpha / massKg + beta - limitMm);
        if (margin < worst) [worst, worstIndex, worstKg, worstLimitMm] = [margin, index, massKg, limitMm];
      }
    }
  }
  const to = line[worstIndex];
  if (!to) return undefined;
  const from = line[worstIndex - 1] ?? to;
  const share = to.massKg === from.massKg ? 1 : (worstKg - from.massKg) / (to.massKg - from.massKg);
  return { side, margin: worst, limit: worstLimitMm, loading: between(from, to, share) };
}

/** A mass equal to an end of the envelope within binary rounding error is moved onto that end, which has limits. */
function onto({ lowestKg, highestKg, lowerEdge }: Envelope, massKg: number): number {
  if (massKg > highestKg) return isAtMost(massKg, highestKg) ? highestKg : massKg;
  return lowerEdge === 'limit' && massKg < lowestKg && isAtLeast(massKg, lowestKg) ? lowestKg : massKg;
}

/** Returns the arm that a piece of a limit gains per kg. */
function slopeOf({ fromKg, toKg, fromMm, toMm }: LimitPiece): number {
  return (toMm - fromMm) / (toKg - fromKg);
}

/** Returns margins of masses outside the span of the envelope: it has no limits there, so they count as outside. */
function massMargins(line: readonly Loading[], { lowestKg, highestKg, lowerEdge }: Envelope): Margin[] {
  return line.flatMap((loading): Margin[] => {
    if (lowerEdge === 'limit' && !isAtLeast(loading.massKg, lowestKg))
      return [{ side: 'below', margin: loading.massKg - lowestKg, loading, limit: lowestKg }];
    if (!isAtMost(loading.massKg, highestKg))
      return [{ side: 'above', margin: highestKg - loading.massKg, loading, limit: highestKg }];
    return [];
  });
}
