import type { LoadedAircraft } from '../../record/visit.ts';
import { armOn, type Envelope, type EnvelopeCorner, envelopeOf, type LimitPiece, withReach } from './envelope.ts';

type Stated = Pick<LoadedAircraft, 'envelope' | 'envelopeEquations' | 'envelopeLowerEdge' | 'mac'>;

/** Whether the record states limits of the centre of gravity, usable or not. */
export function statesEnvelope({ envelope, envelopeEquations }: Stated): boolean {
  return envelope !== undefined || envelopeEquations !== undefined;
}

/**
 * Returns the envelope of an aircraft, from corners by arm or per cent of chord, or from equations.
 *
 * @returns undefined if none is stated, or if it is not usable
 * @source common practice, no source
 */
export function envelopeIn(aircraft: Stated): Envelope | undefined {
  const { envelopeEquations, envelopeLowerEdge } = aircraft;
  if (envelopeEquations) return byEquations(envelopeEquations, envelopeLowerEdge ?? 'limit');
  const corners = statedCorners(aircraft);
  return corners && envelopeOf(corners, envelopeLowerEdge);
}

/** Returns the corners of the envelope, in order round it, in mm and kg; undefined without a usable envelope. */
export function envelopeCorners(aircraft: Stated): EnvelopeCorner[] | undefined {
  if (!aircraft.envelopeEquations) return statedCorners(aircraft);
  const envelope = envelopeIn(aircraft);
  if (!envelope) return undefined;
  const up = (pieces: readonly LimitPiece[]): EnvelopeCorner[] =>
    pieces.flatMap(({ fromKg, toKg, fromMm, toMm }) => [
      { massKg: fromKg, armMm: fromMm },
      { massKg: toKg, armMm: toMm },
    ]);
  const corners = [...up(envelope.forward), ...up(envelope.aft).reverse()];
  return corners.filter(({ massKg, armMm }, index) => {
    const before = corners[index - 1];
    return before?.massKg !== massKg || before.armMm !== armMm;
  });
}

function statedCorners({ envelope, mac }: Stated): EnvelopeCorner[] | undefined {
  const corners = envelope?.map(({ armMm, chordPercent, massKg }): EnvelopeCorner | undefined => {
    if (armMm !== undefined) return { armMm, massKg };
    if (chordPercent === undefined || !mac) return undefined;
    return { armMm: mac.leadingEdgeArmMm + (chordPercent / 100) * mac.lengthMm, massKg };
  });
  return corners?.every((corner) => corner !== undefined) ? corners : undefined;
}

type Equation = NonNullable<Stated['envelopeEquations']>['forward'][number];

function byEquations(
  { forward, aft }: NonNullable<Stated['envelopeEquations']>,
  lowerEdge: 'limit' | 'end-of-drawing',
): Envelope | undefined {
  const sides = { forward: piecesOf(forward), aft: piecesOf(aft) };
  if (!sides.forward || !sides.aft) return undefined;
  const [lowestKg, highestKg] = [sides.forward[0]?.fromKg ?? 0, sides.forward.at(-1)?.toKg ?? 0];
  if (sides.aft[0]?.fromKg !== lowestKg || sides.aft.at(-1)?.toKg !== highestKg) return undefined;
  // Both sides get every level of mass at which either bends, as an envelope by corners has.
  const levels = [...new Set([...sides.forward, ...sides.aft].flatMap(({ fromKg, toKg }) => [fromKg, toKg]))];
  const [front, rear] = [splitAt(sides.forward, levels), splitAt(sides.aft, levels)];
  if (!front.every((piece, index) => isAhead(piece, rear[index] ?? piece))) return undefined;
  return withReach({ lowestKg, highestKg, forward: front, aft: rear }, lowerEdge);
}

/** Whether one piece of a limit is nowhere aft of another over the same masses. */
function isAhead(front: LimitPiece, rear: LimitPiece): boolean {
  return front.fromMm <= rear.fromMm && front.toMm <= rear.toMm;
}

function splitAt(pieces: readonly LimitPiece[], levels: readonly number[]): LimitPiece[] {
  return pieces.flatMap((piece) => {
    const within = levels.filter((level) => level > piece.fromKg && level < piece.toKg).sort((a, b) => a - b);
    const cuts = [piece.fromKg, ...within, piece.toKg];
    return cuts.slice(1).map((toKg, index): LimitPiece => {
      const fromKg = cuts[index] ?? piece.fromKg;
      return { fromKg, toKg, fromMm: armOn(piece, fromKg), toMm: armOn(piece, toKg) };
    });
  });
}

/** Undefined if a piece has no span, or if two do not meet. */
function piecesOf(equations: readonly Equation[]): LimitPiece[] | undefined {
  const rising = equations.toSorted((a, b) => a.fromMassKg - b.fromMassKg);
  const isWhole = rising.every(
    ({ fromMassKg, toMassKg }, index) =>
      toMassKg > fromMassKg && (index === 0 || rising[index - 1]?.toMassKg === fromMassKg),
  );
  return isWhole
    ? rising.map((equation) => ({
        fromKg: equation.fromMassKg,
        toKg: equation.toMassKg,
        fromMm: armAt(equation, equation.fromMassKg),
        toMm: armAt(equation, equation.toMassKg),
      }))
    : undefined;
}

/** arm = armMm + (mass − atMass) · armChange / perMass */
function armAt({ armMm, atMassKg, armChangeMm = 0, perMassKg = 1 }: Equation, massKg: number): number {
  return armMm + ((massKg - atMassKg) * armChangeMm) / perMassKg;
}
