import type { Visit } from '../../record/visit.ts';
import { dateOf } from '../../units/calendar.ts';
import { loadLimitsOf } from '../loading/load-limits.ts';
import { COVERAGE_FACTOR } from '../weighing/uncertainty.ts';
import type { WeighingResult } from '../weighing/weighing-result.ts';
import type { EquipmentChange } from './equipment-change.ts';
import { emptyMassHistory, type HistoryParts } from './history.ts';
import { percentMac } from './mac.ts';
import { cgMm } from './mass-moment.ts';
import type { Prediction } from './prediction-result.ts';
import type { Schedule } from './schedule-result.ts';

export type { Schedule } from './schedule-result.ts';

/**
 * Returns the weighed condition if the visit weighed, else the predicted one; undefined with neither.
 *
 * @source common practice, no source
 */
export function revisedSchedule(
  visit: Pick<Visit, 'aircraft'> & HistoryParts,
  change: EquipmentChange,
  weighing: WeighingResult | undefined,
  prediction: Prediction | undefined,
): Schedule | undefined {
  const empty = weighing?.empty ?? prediction;
  if (!empty) return undefined;
  const armMm = cgMm(empty);
  const weighedBefore =
    visit.baseline?.weighedOn ?? (visit.baseline?.basis === 'weighed' ? visit.baseline.date : undefined);
  return {
    basis: weighing ? 'weighed' : 'computed',
    massKg: empty.massKg,
    momentKgMm: empty.momentKgMm,
    armMm,
    macPercent: percentMac(visit.aircraft.mac, armMm),
    expanded: weighing?.expanded ?? computedExpanded(visit, prediction),
    weighedOn: weighing && visit.weighing ? dateOf(visit.weighing.weighedAt) : weighedBefore,
    changesSinceWeighing: weighing ? 0 : change.lines.filter(({ kind }) => kind !== 'updated').length,
    usefulLoadKg: loadLimitsOf(visit.aircraft, empty.massKg).usefulLoad.kg,
    supersedes: supersededBy(visit),
    history: emptyMassHistory(visit, change, weighing),
  };
}

/** Known for a computed condition only if the baseline states the limits of error that it started from. */
function computedExpanded({ baseline }: HistoryParts, prediction: Prediction | undefined): Schedule['expanded'] {
  if (!prediction || baseline?.emptyMassLimitKg === undefined || baseline.emptyArmLimitMm === undefined)
    return undefined;
  const { massKg, armMm } = prediction.standard;
  return { massKg: COVERAGE_FACTOR * massKg, armMm: COVERAGE_FACTOR * armMm };
}

/** The schedule of another configuration stays valid: only the earlier one of this configuration is superseded. */
function supersededBy({ aircraft, baseline }: Pick<Visit, 'aircraft' | 'baseline'>): string | undefined {
  const { configuration } = aircraft;
  const isOfAnother = baseline?.configuration !== undefined && baseline.configuration !== configuration?.id;
  return isOfAnother ? configuration?.supersedes : baseline?.reference;
}
