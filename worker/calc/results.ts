import type { Visit } from '../visit/visit.ts';
import { type EquipmentChange, equipmentChange } from './equipment-change.ts';
import { type LoadingSettings, type LoadingSheet, loadingSheet } from './loading-sheet.ts';
import { type Comparison, compareWeighing, type Prediction, predictEmpty } from './prediction.ts';
import { revisedSchedule, type Schedule } from './schedule.ts';
import { reduceWeighing, type WeighingResult } from './weighing.ts';

/** Everything computed for a visit, unrounded, in kg, mm, l. */
export interface Results {
  change: EquipmentChange;
  prediction: Prediction | undefined;
  weighing: WeighingResult | undefined;
  comparison: Comparison | undefined;
  schedule: Schedule | undefined;
  loading: LoadingSheet | undefined;
}

/** Runs every topic in reading order. */
export function compute(visit: Visit, settings: LoadingSettings): Results {
  const change = equipmentChange(visit);
  const prediction = predictEmpty(visit, change);
  const weighing = visit.weighing && reduceWeighing(visit, visit.weighing);
  const comparison = weighing && prediction && compareWeighing(weighing, prediction);
  const schedule = revisedSchedule(visit, change, weighing, prediction);
  const loading = schedule && loadingSheet(visit, schedule, settings);
  return { change, prediction, weighing, comparison, schedule, loading };
}
