import type { Visit } from '../../record/visit.ts';
import type { MassMoment } from './mass-moment.ts';

/**
 * Returns empty mass and moment from the documents before the visit; the moment as printed, else from the arm.
 *
 * @source common practice, no source
 */
export function baselineEmpty(visit: Pick<Visit, 'baseline'>): MassMoment | undefined {
  const { baseline } = visit;
  if (!baseline) return undefined;
  const { emptyMassKg: massKg, emptyMomentKgMm, emptyArmMm } = baseline;
  if (emptyMomentKgMm === undefined && emptyArmMm === undefined) return undefined;
  return { massKg, momentKgMm: emptyMomentKgMm ?? massKg * (emptyArmMm ?? 0) };
}
