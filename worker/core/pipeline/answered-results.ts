import type { ElectricalResult } from '../calc/electrical/electrical-result.ts';
import type { CrewFuelCell } from '../calc/loading/loading-result.ts';
import type { LoadingSheet } from '../calc/loading/loading-sheet.ts';
import type { Schedule } from '../calc/mass/schedule-result.ts';
import type { Results } from '../calc/results.ts';
import { addressForms } from '../calc/surveillance/address.ts';
import type { SurveillanceResult } from '../calc/surveillance/results.ts';
import type { Check, LimitCheck } from '../calc/surveillance/surveillance-result.ts';
import type { WeighingResult } from '../calc/weighing/weighing-result.ts';
import { checkName } from '../gate/check-name.ts';
import { nameOfFigure } from '../gate/figure-name.ts';
import { omittedPart, transponderOmission } from '../gate/omission-text.ts';
import { adjustmentName, budgetName, historyReason } from '../pack/line-name.ts';
import { MASS_LIMIT_NAMES } from '../pack/mass-limit-name.ts';
import { stretchName } from '../pack/stretch-name.ts';
import { inEnglish } from '../text/formatter.ts';
import { said } from '../text/message.ts';
import type { Assessed } from './assess.ts';
import type { AssessmentResults } from './results-schema.ts';

type Answered<Part extends keyof AssessmentResults> = NonNullable<AssessmentResults[Part]>;

type Answerable = Pick<Assessed, 'visit' | 'results' | 'pointerAsPosted'>;

/**
 * Returns the results of a visit for a response: every code also has its English text, in any language of the record.
 *
 * Pointers are into the record as posted.
 *
 * @returns plain data without the internal data of calculations and release check, such as the list at every step
 */
export function answeredResults({ visit, results, pointerAsPosted }: Answerable): AssessmentResults {
  const asPosted = <Line extends { pointer: string }>(line: Line): Line => ({
    ...line,
    pointer: pointerAsPosted(line.pointer),
  });
  const { prediction, comparison, residual, antennas, compass, engineRuns, due, comingDue, products, clock } = results;
  const { weighing, schedule, loading, lateral, electrical, surveillance } = results;
  return {
    change: answeredChange(results.change, asPosted),
    prediction,
    weighing: weighing && answeredWeighing(weighing, asPosted),
    comparison,
    residual,
    causes: results.causes,
    schedule: schedule && answeredSchedule(schedule),
    loading: loading && answeredLoading(loading),
    lateral,
    energy: results.energy,
    hang: results.hang,
    configurations: results.configurations.map(({ empty, loading: its, lateral: across }) => ({
      ...empty,
      loading: answeredLoading(its),
      lateral: across,
    })),
    electrical: electrical && answeredElectrical(electrical),
    wiring: answeredWiring(results.wiring),
    antennas,
    surveillance: surveillance && answeredSurveillance(surveillance),
    compass,
    engineRuns,
    measurements: results.measurements && answeredMeasurements(results.measurements),
    due,
    comingDue,
    products,
    clock,
    bulletins: results.applicability.map((applies, index) => ({
      id: visit.bulletins?.items[index]?.id ?? '',
      applies,
    })),
  };
}

type AsPosted = <Line extends { pointer: string }>(line: Line) => Line;

function answeredChange(
  { lines, massKg, momentKgMm, after }: Results['change'],
  asPosted: AsPosted,
): Answered<'change'> {
  return {
    lines: lines.map((line) => ({ ...asPosted(line), name: line.name ?? 'Not on the list' })),
    massKg,
    momentKgMm,
    equipment: after,
  };
}

function answeredWeighing(weighing: WeighingResult, asPosted: AsPosted): Answered<'weighing'> {
  return {
    ...weighing,
    adjustments: weighing.adjustments.map((each) => ({
      ...asPosted(each),
      name: inEnglish(adjustmentName(each.line)),
    })),
    budget: weighing.budget.map((each) => ({ ...each, source: inEnglish(budgetName(each.component)) })),
  };
}

function answeredSchedule(schedule: Schedule): Answered<'schedule'> {
  const history = schedule.history.map((entry) => ({ ...entry, reason: inEnglish(historyReason(entry.cause)) }));
  return { ...schedule, history };
}

function answeredLoading(sheet: LoadingSheet): Answered<'loading'> {
  const { extremes, minimumSoloKg, leastPilot, limits, table, proposals, suspension, cockpitLoads } = sheet;
  return {
    extremes,
    minimumSoloKg,
    leastPilot,
    fullFuelKg: limits.fullFuelKg,
    payloadFullFuelKg: limits.fullTanksPayload.kg,
    limits,
    proposals,
    suspension,
    cockpitLoads,
    categories: sheet.categories.map(({ id, name, limits: its }) => ({ id, name, limits: its })),
    table: { ...table, rows: table.rows.map((row) => ({ ...row, cells: row.cells.map(answeredCell) })) },
  };
}

function answeredCell(cell: CrewFuelCell): Answered<'loading'>['table']['rows'][number]['cells'][number] {
  if (!('refused' in cell)) return cell;
  const { refused } = cell;
  if (refused.state !== 'limit-exceeded') return { refused };
  const { exceeded } = refused;
  return {
    refused: { ...refused, limit: 'id' in exceeded ? exceeded.id : inEnglish(said(MASS_LIMIT_NAMES[exceeded.kind])) },
  };
}

function answeredElectrical({ endurance, ...electrical }: ElectricalResult): Answered<'electrical'> {
  const stretches = endurance?.stretches.map((each) => ({ ...each, name: inEnglish(stretchName(each.use)) })) ?? [];
  return { ...electrical, endurance: endurance && { ...endurance, stretches } };
}

function answeredWiring(wiring: Results['wiring']): Answered<'wiring'> | undefined {
  return (
    wiring && {
      harness: wiring.harness,
      nets: wiring.nets.map(({ pins, circuits }) => ({ pins: pins.map(({ key }) => key), circuits: [...circuits] })),
    }
  );
}

/** Returns addresses in their usual form: six hexadecimal digits. */
function answeredSurveillance(result: SurveillanceResult): Answered<'surveillance'> {
  const { address: _, forms, devices, ...tests } = result;
  const hexadecimal = (address: number | undefined): string | undefined =>
    address === undefined ? undefined : addressForms(address).hexadecimal;
  return {
    ...tests,
    address: forms,
    devices: devices.map(({ id, set, received }) => ({ id, set: hexadecimal(set), received: hexadecimal(received) })),
    transponder: tests.transponder.map(namedFigure),
    modeS: tests.modeS.map(namedCheck),
    transponderOmissions: tests.transponderMissing.map((omission) => inEnglish(transponderOmission(omission))),
    altimeters: tests.altimeters.map(({ figures, omissions }) => ({
      figures: figures.map(namedFigure),
      omissions: omissions.map((each) => ({ ...each, what: inEnglish(omittedPart(each)) })),
    })),
    staticSystems: tests.staticSystems.map(({ figures, checks }) => ({
      figures: figures.map(namedFigure),
      checks: checks.map(namedCheck),
    })),
    pitotSystems: tests.pitotSystems.map(namedFigures),
  };
}

function answeredMeasurements({
  torques,
  magnetometers,
  balances,
}: NonNullable<Results['measurements']>): Answered<'measurements'> {
  return {
    torques: torques.map(namedFigure),
    magnetometers: magnetometers.map(namedFigures),
    balances: balances.map(namedFigures),
  };
}

const namedFigure = (each: LimitCheck) => ({ ...each, name: inEnglish(nameOfFigure(each.figure)) });
const namedFigures = ({ figures }: { figures: LimitCheck[] }) => ({ figures: figures.map(namedFigure) });
const namedCheck = (each: Check) => ({ ...each, name: inEnglish(checkName(each)) });
