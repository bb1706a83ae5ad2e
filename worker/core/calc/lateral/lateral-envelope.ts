import type { LoadedAircraft } from '../../record/visit.ts';
import { type Envelope, envelopeOf } from '../loading/envelope.ts';
import type { Direction } from './across.ts';

type Stated = NonNullable<LoadedAircraft['lateralEnvelope']>;

/** An edge of a convex area: n · (arm, lateral arm) ≤ offset, where n has length 1. */
export interface Edge extends Direction {
  offsetMm: number;
}

/** Lateral limits over mass, or the edges of a convex area over both arms. */
export type LateralLimits = { by: 'mass'; envelope: Envelope } | { by: 'arm'; edges: Edge[] };

/**
 * Returns the lateral limits.
 *
 * @returns undefined if the corners bound no area, or if an area over both arms is not convex
 * @source common practice, no source
 */
export function lateralLimitsOf(stated: Stated): LateralLimits | undefined {
  if (stated.by === 'mass') {
    const corners = stated.corners.map(({ massKg, lateralArmMm }) => ({ massKg, armMm: lateralArmMm }));
    const envelope = envelopeOf(corners, 'end-of-drawing');
    return envelope && { by: 'mass', envelope };
  }
  const edges = edgesOf(stated.corners.map(({ armMm, lateralArmMm }) => [armMm, lateralArmMm]));
  return edges && { by: 'arm', edges };
}

type Point = readonly [x: number, y: number];

function edgesOf(corners: readonly Point[]): Edge[] | undefined {
  const area = corners.reduce((sum, [x, y], index) => {
    const [nextX, nextY] = corners[(index + 1) % corners.length] ?? [x, y];
    return sum + x * nextY - nextX * y;
  }, 0);
  if (area === 0) return undefined;
  const turn = Math.sign(area);
  const edges = corners.flatMap(([x, y], index): Edge[] => {
    const [nextX, nextY] = corners[(index + 1) % corners.length] ?? [x, y];
    const length = Math.hypot(nextX - x, nextY - y);
    if (length === 0) return [];
    const along = (turn * (nextY - y)) / length;
    const across = (-turn * (nextX - x)) / length;
    return [{ along, across, offsetMm: along * x + across * y }];
  });
  const isConvex = edges.every(({ along, across, offsetMm }) =>
    corners.every(([x, y]) => along * x + across * y <= offsetMm + CLOSE_MM),
  );
  return isConvex ? edges : undefined;
}

/** Far below any printed digit. */
const CLOSE_MM = 1e-6;
