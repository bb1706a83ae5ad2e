import type { Visit } from '../../record/visit.ts';
import { loadingExtremes } from '../loading/extremes.ts';
import type { LoadSpaceOptions } from '../loading/load-space.ts';
import { loadingOf } from '../loading/loading-of.ts';
import type { LoadingSheet } from '../loading/loading-sheet.ts';
import { equipmentChange } from '../mass/equipment-change.ts';
import { cgMm, type MassMoment } from '../mass/mass-moment.ts';
import { compareWeighing, predictEmpty } from '../mass/prediction.ts';
import { reduceWeighing } from '../weighing/weighing.ts';
import { ACROSS, acrossOf, turned } from './across.ts';
import { lateralLimitsOf } from './lateral-envelope.ts';
import { lateralMargins } from './lateral-margins.ts';
import type { LateralResult } from './lateral-result.ts';

export type { LateralResult } from './lateral-result.ts';

/** Whether the record has anything from which a lateral centre of gravity follows. */
export function statesLateral({ aircraft, baseline, weighing }: Visit): boolean {
  return (
    aircraft.lateralEnvelope !== undefined ||
    baseline?.emptyLateralArmMm !== undefined ||
    baseline?.emptyLateralMomentKgMm !== undefined ||
    (weighing?.points ?? []).some(({ lateralArmMm }) => lateralArmMm !== undefined)
  );
}

/**
 * Returns the lateral centre of gravity after the visit, weighed or computed, by the rules of the longitudinal one.
 *
 * @returns undefined if the record has no lateral arm, or nothing from which an empty condition follows
 * @source common practice, no source: Y = Σ m·y / Σ m
 */
export function lateralEmpty(
  visit: Visit,
): Pick<LateralResult, 'empty' | 'basis' | 'expanded' | 'comparison'> | undefined {
  if (!statesLateral(visit)) return undefined;
  const across = acrossOf(visit);
  const weighedLateral = (visit.weighing?.points ?? []).some(({ lateralArmMm }) => lateralArmMm !== undefined);
  const weighing = across.weighing && weighedLateral ? reduceWeighing(across, across.weighing) : undefined;
  const prediction = predictEmpty(across, equipmentChange(across));
  const empty = weighing?.empty ?? prediction;
  if (!empty) return undefined;
  const { massKg, momentKgMm } = empty;
  return {
    empty: { massKg, momentKgMm, armMm: cgMm(empty) },
    basis: weighing ? 'weighed' : 'computed',
    expanded: weighing?.expanded,
    comparison: weighing && prediction && compareWeighing(weighing, prediction),
  };
}

/** Returns the lateral axis of the loaded aircraft, for one empty condition. */
export function lateralLoading(
  aircraft: Visit['aircraft'],
  empty: MassMoment & { lateralKgMm: number },
  sheet: LoadingSheet,
  options: Omit<LoadSpaceOptions, 'empty'>,
): Pick<LateralResult, 'extremes' | 'margins' | 'loadings'> {
  const across = turned(aircraft, ACROSS);
  const emptyAcross = { massKg: empty.massKg, momentKgMm: empty.lateralKgMm };
  const extremes = loadingExtremes(across, { ...options, empty: emptyAcross });
  const limits = aircraft.lateralEnvelope && lateralLimitsOf(aircraft.lateralEnvelope);
  return {
    extremes: extremes && { left: extremes.forward, right: extremes.aft },
    margins: limits ? lateralMargins(aircraft, empty, limits, options) : [],
    loadings: sheet.loadings.map(({ kind, path }) => {
      const at = (load: Readonly<Record<string, number>> = {}): number => cgMm(loadingOf(across, emptyAcross, load));
      return { kind, takeOffMm: at(path[0]?.load), noFuelMm: at(path.at(-1)?.load) };
    }),
  };
}
