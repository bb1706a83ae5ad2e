/** A corner of the envelope. */
export interface EnvelopeCorner {
  armMm: number;
  massKg: number;
}

/** Straight piece of a limit: the arm at its lower and its upper mass. */
export interface LimitPiece {
  fromKg: number;
  toKg: number;
  fromMm: number;
  toMm: number;
}

/** What the lower edge of an envelope is: a true min. mass, or only the end of the manufacturer’s drawing. */
export type LowerEdge = 'limit' | 'end-of-drawing';

/** Forward and aft limits of an envelope over mass. */
export interface Envelope {
  lowestKg: number;
  highestKg: number;
  forward: LimitPiece[];
  aft: LimitPiece[];
  /** Limits with their continuation straight down from the lower edge, if that is only the end of the drawing. */
  reach: { forward: LimitPiece[]; aft: LimitPiece[] };
  lowerEdge: LowerEdge;
}

/**
 * Splits an envelope polygon into its forward and aft limits.
 *
 * @returns undefined if the polygon has no area, or if a level of mass crosses it more than twice
 * @source common practice, no source
 */
export function envelopeOf(corners: readonly EnvelopeCorner[], lowerEdge: LowerEdge = 'limit'): Envelope | undefined {
  const levels = [...new Set(corners.map(({ massKg }) => massKg))].sort((a, b) => a - b);
  const lowestKg = levels[0] ?? 0;
  const highestKg = levels.at(-1) ?? 0;
  if (!(highestKg > lowestKg)) return undefined;
  const forward: LimitPiece[] = [];
  const aft: LimitPiece[] = [];
  for (const [index, toKg] of levels.slice(1).entries()) {
    const fromKg = levels[index] ?? toKg;
    const crossed = sidesBetween(corners, fromKg, toKg);
    const [front, rear] = crossed;
    if (!front || !rear || crossed.length !== 2) return undefined;
    if (!(front.fromMm <= rear.fromMm && front.toMm <= rear.toMm)) return undefined;
    forward.push(front);
    aft.push(rear);
  }
  return withReach({ lowestKg, highestKg, forward, aft }, lowerEdge);
}

/**
 * Adds the reach of the limits below the lower edge.
 *
 * @source common practice, no source: below the end of the drawing the limits of its lowest mass hold
 */
export function withReach(
  limits: Pick<Envelope, 'lowestKg' | 'highestKg' | 'forward' | 'aft'>,
  lowerEdge: LowerEdge,
): Envelope {
  const down = (pieces: readonly LimitPiece[]): LimitPiece[] => {
    const armMm = pieces[0]?.fromMm ?? 0;
    return [{ fromKg: 0, toKg: limits.lowestKg, fromMm: armMm, toMm: armMm }, ...pieces];
  };
  const reach =
    lowerEdge === 'end-of-drawing' && limits.lowestKg > 0
      ? { forward: down(limits.forward), aft: down(limits.aft) }
      : { forward: limits.forward, aft: limits.aft };
  return { ...limits, reach, lowerEdge };
}

/** Returns the sides of the polygon that span a band of mass, from forward to aft at its middle. */
function sidesBetween(corners: readonly EnvelopeCorner[], fromKg: number, toKg: number): LimitPiece[] {
  const pieces: LimitPiece[] = [];
  for (const [index, a] of corners.entries()) {
    const b = corners[(index + 1) % corners.length] ?? a;
    const [low, high] = a.massKg < b.massKg ? [a, b] : [b, a];
    if (!(low.massKg <= fromKg && high.massKg >= toKg) || low.massKg === high.massKg) continue;
    const armAt = (massKg: number): number =>
      low.armMm + ((massKg - low.massKg) / (high.massKg - low.massKg)) * (high.armMm - low.armMm);
    pieces.push({ fromKg, toKg, fromMm: armAt(fromKg), toMm: armAt(toKg) });
  }
  return pieces.sort((a, b) => a.fromMm + a.toMm - (b.fromMm + b.toMm));
}

/**
 * Returns the arm in mm of a piece of a limit at a mass within it.
 *
 * @param massKg from `fromKg` to `toKg`, which must differ
 * @source definition of the straight line between two points
 */
export function armOn({ fromKg, toKg, fromMm, toMm }: LimitPiece, massKg: number): number {
  return fromMm + ((massKg - fromKg) / (toKg - fromKg)) * (toMm - fromMm);
}
