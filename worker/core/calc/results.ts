import type { Visit } from '../record/visit.ts';
import { type AntennasResult, antennaResults } from './antennas/results.ts';
import { type ReleaseClock, releaseClock } from './clock/release-clock.ts';
import { type CompassResult, reduceSwing } from './compass/swing.ts';
import { type ConfigurationResult, otherConfigurations } from './configurations/other-configurations.ts';
import { type ElectricalResult, electricalResults } from './electrical/results.ts';
import { type EnergyResult, energyResults } from './energy/energy-results.ts';
import { compareRuns, type RunComparison } from './engine/engine-runs.ts';
import { type LateralResult, lateralEmpty } from './lateral/lateral.ts';
import { lateralOf } from './lateral/lateral-of.ts';
import { type Applies, applicabilityOf } from './lives/applicability.ts';
import { type Due, dueList } from './lives/due.ts';
import { type ProductTime, productTimes } from './lives/product-time.ts';
import { type LoadingSettings, type LoadingSheet, loadingSheet } from './loading/loading-sheet.ts';
import { type EquipmentChange, equipmentChange } from './mass/equipment-change.ts';
import { type Comparison, compareWeighing, type Prediction, predictEmpty } from './mass/prediction.ts';
import { type Residual, residualOf } from './mass/residual.ts';
import { revisedSchedule, type Schedule } from './mass/schedule.ts';
import { measurementResults } from './measurements/measurements.ts';
import type { MeasurementsResult } from './measurements/measurements-result.ts';
import { type CarryOver, carryOver } from './open-items/carry-over.ts';
import type { OpenItem } from './open-items/open-item.ts';
import { NO_READINGS, type Readings, readingsWith } from './open-items/readings.ts';
import { dueItems, type OpenDue } from './open-items/time-left.ts';
import { type SurveillanceResult, surveillanceResults } from './surveillance/results.ts';
import { type MismatchCauses, mismatchCauses } from './weighing/causes/mismatch-causes.ts';
import { type HangResult, hangResults } from './weighing/hang-tests.ts';
import { reduceWeighing, type WeighingResult } from './weighing/weighing.ts';
import { type WiringResult, wiringResults } from './wiring/results.ts';

/** Results of a visit, unrounded, in kg, mm, l. */
export interface Results {
  change: EquipmentChange;
  prediction: Prediction | undefined;
  weighing: WeighingResult | undefined;
  comparison: Comparison | undefined;
  residual: Residual | undefined;
  /** Single causes that explain the difference of weighing and prediction. */
  causes: MismatchCauses | undefined;
  schedule: Schedule | undefined;
  loading: LoadingSheet | undefined;
  /** Lateral axis; undefined if the record has no lateral arms. */
  lateral: LateralResult | undefined;
  /** Traction batteries; undefined without any. */
  energy: EnergyResult | undefined;
  /** Hang tests; undefined without any. */
  hang: HangResult | undefined;
  /** Every other configuration that has an empty condition. */
  configurations: ConfigurationResult[];
  electrical: ElectricalResult | undefined;
  wiring: WiringResult | undefined;
  antennas: AntennasResult | undefined;
  surveillance: SurveillanceResult | undefined;
  compass: CompassResult | undefined;
  engineRuns: RunComparison[];
  measurements: MeasurementsResult | undefined;
  due: Due[];
  /** Times of the products whose fitting is recorded. */
  products: ProductTime[];
  /** The one list of what is due after the visit, by this record and by earlier ones; the first due at the top. */
  comingDue: OpenDue[];
  /** One for each bulletin, in their order. */
  applicability: Applies[];
  clock: ReleaseClock;
  /** Open items before the visit, and their state after it. */
  open: CarryOver;
  /** Hours and landings of the aircraft, by this visit and by those before it. */
  readings: Readings;
}

export interface Settings extends LoadingSettings {
  /** Time of the assessment: due items and the rest of the day follow from it. */
  at: string;
  /** Items that earlier packs left open; undefined if none were consulted. */
  open?: readonly OpenItem[] | undefined;
  /** Meter readings of earlier visits. @default none */
  readings?: Readings | undefined;
}

/** Runs every topic in reading order. */
export function compute(visit: Visit, settings: Settings): Results {
  const change = equipmentChange(visit);
  const prediction = predictEmpty(visit, change);
  const weighing = visit.weighing && reduceWeighing(visit, visit.weighing);
  const comparison = weighing && prediction && compareWeighing(weighing, prediction);
  const schedule = revisedSchedule(visit, change, weighing, prediction);
  const ofEmpty = lateralEmpty(visit);
  const worked = schedule && {
    massKg: schedule.massKg,
    momentKgMm: schedule.momentKgMm,
    lateralKgMm: ofEmpty?.empty.momentKgMm,
  };
  const loading = worked && loadingSheet(visit, worked, settings);
  const open = carryOver(settings.open, visit, settings.at);
  const readings = readingsWith(settings.readings ?? NO_READINGS, visit);
  return {
    change,
    prediction,
    weighing,
    comparison,
    residual: weighing && prediction && comparison && residualOf(weighing, prediction, comparison),
    causes: weighing && prediction && mismatchCauses(visit, change, weighing, prediction),
    schedule,
    loading,
    lateral: ofEmpty && lateralOf(visit.aircraft, worked, loading, ofEmpty, settings),
    energy: energyResults(visit.aircraft),
    hang: visit.weighing && hangResults(visit.aircraft, visit.weighing),
    configurations: otherConfigurations(visit, worked, change, settings),
    electrical: visit.electrical && electricalResults(visit.electrical),
    wiring: visit.wiring && wiringResults(visit.wiring),
    antennas: visit.antennas && antennaResults(visit.antennas),
    surveillance: visit.surveillance && surveillanceResults(visit, visit.surveillance),
    compass: visit.compass && reduceSwing(visit.compass),
    engineRuns: compareRuns(visit.engineRuns ?? []),
    measurements: visit.measurements && measurementResults(visit.measurements),
    due: visit.lives ? dueList(visit, visit.lives, settings.at) : [],
    products: productTimes(visit),
    comingDue: dueItems(open.standing, visit, readings, settings.at),
    applicability: (visit.bulletins?.items ?? []).map((bulletin) => applicabilityOf(visit, change.after, bulletin)),
    clock: releaseClock(visit, settings.at),
    open,
    readings,
  };
}
