import type { Comparison } from '../../calc/prediction.ts';
import type { Residual } from '../../calc/residual.ts';
import { COVERAGE_FACTOR } from '../../calc/uncertainty.ts';
import type { WeighingResult } from '../../calc/weighing.ts';
import { DASH } from '../../text/dash.ts';
import * as m from '../../text/generated/messages.ts';
import type { Weighing } from '../../visit/visit.ts';
import type { PackContext } from '../context.ts';
import { adjustmentName } from '../line-name.ts';
import { nameOf, signatureOf } from '../people.ts';
import type { View } from '../render.ts';
import { budgetRows } from './budget-rows.ts';
import { unitHeads } from './change-rows.ts';
import { common } from './common.ts';

const FUEL_STATES = {
  'drained-to-unusable': m.weighingReport_drainedUnusable,
  dry: m.weighingReport_tanksDryUnusableFuel,
  stated: m.weighingReport_statedBelow,
  full: m.weighingReport_fullUsableFuelTaken,
} as const;
const OIL_STATES = {
  full: m.weighingReport_full,
  drained: m.weighingReport_drainedAddedBelow,
  stated: m.weighingReport_statedBelow,
} as const;

export function weighingReportView(context: PackContext): View {
  const { say } = context;
  const { weighing } = context.visit;
  const result = context.results.weighing;
  if (!weighing || !result) throw new Error('Cannot fill the weighing report: the visit has no weighing');
  return {
    ...common(context),
    ...unitHeads(context),
    ...conditions(context, weighing),
    scales: weighing.scales.map((scale) => scaleRow(context, scale)),
    points: weighing.points.flatMap((point, index) => runRows(context, point.scale, result.points[index])),
    ...reduction(context, result),
    ...budgetRows(context, result),
    ...comparison(context, context.results.comparison),
    signatures: [
      signatureOf(context.visit, weighing.by, say.text(m.weighingReport_weighed), say.day(weighing.weighedAt)),
      signatureOf(context.visit, weighing.checkedBy, say.text(m.weighingReport_checked), say.day(weighing.weighedAt)),
    ],
  };
}

function conditions({ visit, say }: PackContext, weighing: Weighing): View {
  const { level } = weighing;
  return {
    at: say.moment(weighing.weighedAt),
    place: `${weighing.place}, ${weighing.indoors ? say.text(m.weighingReport_indoors) : say.text(m.weighingReport_open)}`,
    by: nameOf(visit, weighing.by),
    datum: visit.aircraft.datum,
    levelling: visit.aircraft.levelling,
    level: level
      ? say.text(m.weighingReport_noseUpRightDown, {
          longitudinal: say.signed(level.longitudinalDeg, 1),
          lateral: say.signed(level.lateralDeg, 1),
        })
      : say.text(m.notStated),
    fuel: weighing.fuelState ? say.text(FUEL_STATES[weighing.fuelState]) : say.text(m.notStated2),
    oil: weighing.oilState ? say.text(OIL_STATES[weighing.oilState]) : say.text(m.notStated2),
    note: weighing.note ?? DASH,
  };
}

function scaleRow({ say }: PackContext, scale: Weighing['scales'][number]): Record<string, string> {
  return {
    id: scale.id,
    serial: scale.serial,
    capacity: say.number('mass', scale.capacityKg),
    step: say.number('mass', scale.resolutionKg, { extra: 1 }),
    limit: `±${say.number('mass', scale.errorLimitKg, { extra: 1 })}`,
    due: say.date(scale.calibrationDueOn),
  };
}

function runRows(
  { say }: PackContext,
  scale: string,
  point: WeighingResult['points'][number] | undefined,
): Record<string, string>[] {
  return (point?.runs ?? []).map(({ grossKg, correctionKg, netKg }, run) => ({
    point: run === 0 ? (point?.name ?? '') : '',
    scale: run === 0 ? scale : '',
    run: String(run + 1),
    gross: say.number('mass', grossKg, { extra: 1 }),
    correction: say.number('mass', correctionKg, { signed: true, extra: 1 }),
    tare: say.number('mass', point?.tareKg ?? 0, { extra: 1 }),
    net: say.number('mass', netKg, { extra: 1 }),
  }));
}

function reduction({ say }: PackContext, result: WeighingResult): View {
  const row = (name: string, massKg: number, armMm: number, momentKgMm: number): Record<string, string> => ({
    name,
    mass: say.number('mass', massKg, { extra: 1 }),
    arm: say.number('arm', armMm, { extra: 1 }),
    moment: say.number('moment', momentKgMm),
  });
  const { asWeighed, empty, adjustments, expanded } = result;
  return {
    means: result.points.map(({ name, massKg, armMm, momentKgMm }) => row(name, massKg, armMm, momentKgMm)),
    asWeighed: row(
      say.text(m.weighingReport_weighed2),
      asWeighed.massKg,
      asWeighed.momentKgMm / asWeighed.massKg,
      asWeighed.momentKgMm,
    ),
    adjustments: adjustments.map(({ line, massKg, armMm, momentKgMm }) =>
      row(reductionName(say, line), massKg, armMm, momentKgMm),
    ),
    empty: row(say.text(m.weighingReport_emptyCondition), empty.massKg, empty.armMm, empty.momentKgMm),
    emptyMass: `${say.number('mass', empty.massKg)} ± ${say.measure('mass', expanded.massKg)}`,
    emptyArm: `${say.number('arm', empty.armMm, { extra: 1 })} ± ${say.measure('arm', expanded.armMm, { extra: 1 })}`,
    emptyMoment: say.measure('moment', empty.momentKgMm),
    runs: result.runTotalsKg.map((totalKg) => say.number('mass', totalKg, { extra: 1 })).join(', ') || DASH,
  };
}

/** What it is, and which way it was counted. */
function reductionName(say: PackContext['say'], line: WeighingResult['adjustments'][number]['line']): string {
  if (line.kind === 'item-aboard') return say.text(m.weighingReport_off, { item: line.item });
  return line.kind === 'item-missing'
    ? say.text(m.weighingReport_on, { item: line.item })
    : say.value(adjustmentName(line));
}

function comparison({ say, results }: PackContext, held: Comparison | undefined): View {
  const { prediction, weighing } = results;
  if (!held || !prediction || !weighing) return { hasComparison: false };
  const ratio = (value: number): string => say.plain(value, 2);
  return {
    hasComparison: true,
    predictedMass: say.number('mass', prediction.massKg, { extra: 1 }),
    predictedArm: say.number('arm', prediction.armMm, { extra: 1 }),
    weighedMass: say.number('mass', weighing.empty.massKg, { extra: 1 }),
    weighedArm: say.number('arm', weighing.empty.armMm, { extra: 1 }),
    differenceMass: say.number('mass', held.differenceKg, { signed: true, extra: 1 }),
    differenceArm: say.number('arm', held.differenceMm, { signed: true, extra: 1 }),
    standardMass: say.number('mass', held.standard.massKg, { extra: 1 }),
    standardArm: say.number('arm', held.standard.armMm, { extra: 1 }),
    ratioMass: ratio(held.massRatio),
    ratioArm: ratio(held.armRatio),
    residual: residualLine(results.residual, say),
    verdict: held.isSignificant
      ? say.text(m.weighingReport_leastOneDifferenceMore, { coverageFactor: COVERAGE_FACTOR })
      : say.text(m.weighingReport_bothDifferencesWithinStandard, { coverageFactor: COVERAGE_FACTOR }),
  };
}

/** Says what the papers may lack, and no more than the scales can tell. */
function residualLine(residual: Residual | undefined, say: PackContext['say']): string {
  if (!residual) return '';
  const mass = `${say.measure('mass', residual.massKg, { signed: true, extra: 1 })} ± ${say.measure('mass', residual.expandedKg, { extra: 1 })} (k = 2)`;
  if (!residual.isTold || residual.armMm === undefined)
    return say.text(m.weighingReport_residualAgainstPapersSurvey, { mass });
  const what =
    residual.massKg > 0 ? say.text(m.weighingReport_aboardPapersLack) : say.text(m.weighingReport_papersNotAboard);
  return say.text(m.weighingReport_residualAgainstPapersSurveyChanges, {
    mass,
    arm: say.measure('arm', residual.armMm),
    what,
  });
}
