import type { MassMoment } from '../mass/mass-moment.ts';

/** Empty condition, with its lateral moment if that is known. */
export interface EmptyAircraft extends MassMoment {
  lateralKgMm?: number | undefined;
}

/** Returns mass and lateral moment of the empty aircraft; undefined if that is not known. */
export function lateralOfEmpty({
  massKg,
  lateralKgMm,
}: EmptyAircraft): { massKg: number; lateralKgMm: number } | undefined {
  return lateralKgMm === undefined ? undefined : { massKg, lateralKgMm };
}
