import { tanksOf } from '../../calc/loading/fuel.ts';
import type { Comparison } from '../../calc/mass/prediction.ts';
import type { Residual } from '../../calc/mass/residual.ts';
import { hasOil } from '../../calc/weighing/oil.ts';
import { COVERAGE_FACTOR } from '../../calc/weighing/uncertainty.ts';
import type { WeighingResult } from '../../calc/weighing/weighing.ts';
import type { Aircraft, Weighing } from '../../record/visit.ts';
import { DASH } from '../../text/dash.ts';
import * as m from '../../text/generated/messages.ts';
import { termOf } from '../../text/terms.ts';
import type { PackContext } from '../context.ts';
import { adjustmentName } from '../line-name.ts';
import { nameOf, signatureOf } from '../people.ts';
import type { View } from '../render.ts';
import { accepted } from './accepted.ts';
import { budgetRows } from './budget-rows.ts';
import { unitHeads } from './change-rows.ts';
import { common } from './common.ts';
import { weighingExtras } from './weighing-extras.ts';

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
  const { fmt } = context;
  const { weighing } = context.visit;
  const result = context.results.weighing;
  if (!weighing || !result) throw new Error('Cannot fill the weighing report: the visit has no weighing');
  return {
    ...common(context),
    ...accepted(context, '/weighing', '/baseline'),
    ...unitHeads(context),
    ...conditions(context, weighing),
    scales: weighing.scales.map((scale) => scaleRow(context, scale)),
    points: weighing.points.flatMap((point, index) => runRows(context, point.scale, result.points[index])),
    ...reduction(context, result),
    ...budgetRows(context, result),
    ...comparison(context, context.results.comparison),
    further: furtherEvidence(context, weighing, result),
    ...weighingExtras(context, weighing),
    signatures: [
      signatureOf(context, weighing.by, fmt.text(m.weighingReport_weighed), fmt.day(weighing.weighedAt)),
      signatureOf(context, weighing.checkedBy, fmt.text(m.weighingReport_checked), fmt.day(weighing.weighedAt)),
    ],
  };
}

function conditions({ visit, fmt }: PackContext, weighing: Weighing): View {
  const { level } = weighing;
  return {
    at: fmt.timestamp(weighing.weighedAt),
    place: `${weighing.place}, ${weighing.indoors ? fmt.text(m.weighingReport_indoors) : fmt.text(m.weighingReport_open)}`,
    by: nameOf(visit, weighing.by),
    datum: visit.aircraft.datum,
    levelling: visit.aircraft.levelling,
    level: level
      ? fmt.text(m.weighingReport_noseUpRightDown, {
          longitudinal: fmt.signed(level.longitudinalDeg),
          lateral: fmt.signed(level.lateralDeg),
        })
      : fmt.text(m.notStated),
    attitude: attitudeText(fmt, visit.aircraft.levelAttitude),
    support: weighing.support ?? fmt.text(m.notStated2),
    fuel:
      tanksOf(visit.aircraft).length === 0
        ? fmt.text(m.weighingReport_noTank)
        : fmt.text(weighing.fuelState ? FUEL_STATES[weighing.fuelState] : m.notStated2),
    oil: hasOil(visit.aircraft)
      ? fmt.text(weighing.oilState ? OIL_STATES[weighing.oilState] : m.notStated2)
      : fmt.text(m.weighingReport_noOil),
    note: weighing.note ?? DASH,
  };
}

/** Returns the attitude that the manufacturer states, if it is not level. */
function attitudeText(fmt: PackContext['fmt'], attitude: Aircraft['levelAttitude']): string {
  if (!attitude) return '';
  return fmt.text(m.weighingReport_attitude, {
    longitudinal: fmt.signed(attitude.longitudinalDeg),
    lateral: fmt.signed(attitude.lateralDeg),
    source: attitude.source,
  });
}

function scaleRow({ fmt }: PackContext, scale: Weighing['scales'][number]): Record<string, string> {
  return {
    id: scale.id,
    serial: scale.serial,
    capacity: fmt.number('mass', scale.capacityKg),
    step: fmt.number('mass', scale.resolutionKg, { extra: 1 }),
    limit: `±${fmt.number('mass', scale.errorLimitKg, { extra: 1 })}`,
    certificate: scale.certificate ?? DASH,
    calibrated: scale.calibratedOn ? fmt.date(scale.calibratedOn) : DASH,
    due: fmt.date(scale.calibrationDueOn),
  };
}

function runRows(
  { fmt }: PackContext,
  scale: string,
  point: WeighingResult['points'][number] | undefined,
): Record<string, string>[] {
  return (point?.runs ?? []).map(({ grossKg, correctionKg, netKg }, run) => ({
    point: run === 0 ? (point?.name ?? '') : '',
    scale: run === 0 ? scale : '',
    run: String(run + 1),
    gross: fmt.number('mass', grossKg, { extra: 1 }),
    correction: fmt.number('mass', correctionKg, { signed: true, extra: 1 }),
    tare: fmt.number('mass', point?.tareKg ?? 0, { extra: 1 }),
    net: fmt.number('mass', netKg, { extra: 1 }),
  }));
}

function reduction({ fmt }: PackContext, result: WeighingResult): View {
  const row = (name: string, massKg: number, armMm: number, momentKgMm: number): Record<string, string> => ({
    name,
    mass: fmt.number('mass', massKg, { extra: 1 }),
    arm: fmt.number('arm', armMm, { extra: 1 }),
    moment: fmt.number('moment', momentKgMm),
  });
  const { asWeighed, empty, adjustments, expanded } = result;
  return {
    means: result.points.map(({ name, massKg, armMm, momentKgMm }) => row(name, massKg, armMm, momentKgMm)),
    asWeighed: row(
      fmt.text(m.weighingReport_weighed2),
      asWeighed.massKg,
      asWeighed.momentKgMm / asWeighed.massKg,
      asWeighed.momentKgMm,
    ),
    adjustments: adjustments.map(({ line, massKg, armMm, momentKgMm }) =>
      row(reductionName(fmt, line), massKg, armMm, momentKgMm),
    ),
    empty: row(fmt.text(m.weighingReport_emptyCondition), empty.massKg, empty.armMm, empty.momentKgMm),
    emptyMass: `${fmt.number('mass', empty.massKg)} ± ${fmt.measure('mass', expanded.massKg)}`,
    emptyArm: `${fmt.number('arm', empty.armMm, { extra: 1 })} ± ${fmt.measure('arm', expanded.armMm, { extra: 1 })}`,
    emptyMoment: fmt.measure('moment', empty.momentKgMm),
    runs: result.runTotalsKg.map((totalKg) => fmt.number('mass', totalKg, { extra: 1 })).join(', ') || DASH,
  };
}

/** Returns the name of an adjustment, and its sign in words. */
function reductionName(fmt: PackContext['fmt'], line: WeighingResult['adjustments'][number]['line']): string {
  if (line.kind === 'item-aboard') return fmt.text(m.weighingReport_off, { item: line.item });
  return line.kind === 'item-missing'
    ? fmt.text(m.weighingReport_on, { item: line.item })
    : fmt.value(adjustmentName(line));
}

function comparison({ fmt, results }: PackContext, held: Comparison | undefined): View {
  const { prediction, weighing } = results;
  if (!held || !prediction || !weighing) return { hasComparison: false };
  const ratio = (value: number): string => fmt.plain(value, 2);
  return {
    hasComparison: true,
    predictedMass: fmt.number('mass', prediction.massKg, { extra: 1 }),
    predictedArm: fmt.number('arm', prediction.armMm, { extra: 1 }),
    weighedMass: fmt.number('mass', weighing.empty.massKg, { extra: 1 }),
    weighedArm: fmt.number('arm', weighing.empty.armMm, { extra: 1 }),
    differenceMass: fmt.number('mass', held.differenceKg, { signed: true, extra: 1 }),
    differenceArm: fmt.number('arm', held.differenceMm, { signed: true, extra: 1 }),
    standardMass: fmt.number('mass', held.standard.massKg, { extra: 1 }),
    standardArm: fmt.number('arm', held.standard.armMm, { extra: 1 }),
    ratioMass: ratio(held.massRatio),
    ratioArm: ratio(held.armRatio),
    residual: residualLine(results.residual, fmt),
    verdict: held.isSignificant
      ? fmt.text(m.weighingReport_leastOneDifferenceMore, { coverageFactor: COVERAGE_FACTOR })
      : fmt.text(m.weighingReport_bothDifferencesWithinStandard, { coverageFactor: COVERAGE_FACTOR }),
  };
}

/** Returns the second weighing, and the accepted cause of a difference, as sentences. */
function furtherEvidence({ fmt, visit }: PackContext, weighing: Weighing, result: WeighingResult): string[] {
  const { repeated, differenceExplained } = weighing;
  const again =
    repeated && result.repeated
      ? [
          fmt.text(m.weighingReport_weighedAgain, {
            at: fmt.timestamp(repeated.at),
            by: nameOf(visit, repeated.by),
            mass: fmt.measure('mass', result.repeated.differenceKg, { signed: true, extra: 1 }),
            arm: fmt.measure('arm', result.repeated.differenceMm, { signed: true, extra: 1 }),
          }),
        ]
      : [];
  const explained = differenceExplained
    ? [
        fmt.text(m.weighingReport_explained, {
          by: nameOf(visit, differenceExplained.by),
          cause: fmt.value(termOf(differenceExplained.cause)),
          words: differenceExplained.words,
        }),
      ]
    : [];
  return [...again, ...explained];
}

/** States the mass that the documents may lack, within what the scales can show. */
function residualLine(residual: Residual | undefined, fmt: PackContext['fmt']): string {
  if (!residual) return '';
  const mass = `${fmt.measure('mass', residual.massKg, { signed: true, extra: 1 })} ± ${fmt.measure('mass', residual.expandedKg, { extra: 1 })} (k = 2)`;
  if (!residual.isTold || residual.armMm === undefined)
    return fmt.text(m.weighingReport_residualAgainstPapersSurvey, { mass });
  const what =
    residual.massKg > 0 ? fmt.text(m.weighingReport_aboardPapersLack) : fmt.text(m.weighingReport_papersNotAboard);
  return fmt.text(m.weighingReport_residualAgainstPapersSurveyChanges, {
    mass,
    arm: fmt.measure('arm', residual.armMm),
    what,
  });
}
