import type { HangResult } from '../../calc/weighing/hang-tests.ts';
import { hasOil } from '../../calc/weighing/oil.ts';
import { COVERAGE_FACTOR } from '../../calc/weighing/uncertainty.ts';
import type { Weighing } from '../../record/visit.ts';
import { DASH } from '../../text/dash.ts';
import * as m from '../../text/generated/messages.ts';
import type { PackContext } from '../context.ts';
import type { View } from '../render.ts';
import { type Column, sectionOf, tableOf } from './table-section.ts';

/** Returns measured distances, the lateral result and hang tests as sections, and what the uncertainty leaves out. */
export function weighingExtras(context: PackContext, weighing: Weighing): View {
  return {
    distances: distances(context, weighing),
    sections: [...lateral(context, weighing), ...hang(context)],
    leftOut: leftOut(context, weighing),
  };
}

function distances({ fmt }: PackContext, { distances: measured = [] }: Weighing): View[] {
  if (measured.length === 0) return [];
  const rows = measured.map(({ name, distanceMm, limitMm }) => [
    name,
    fmt.number('arm', distanceMm, { extra: 1 }),
    limitMm === undefined ? DASH : `±${fmt.number('arm', limitMm, { extra: 1 })}`,
  ]);
  const columns: Column[] = [
    ['text', fmt.text(m.weighingReport_between)],
    ['num', fmt.text(m.weighingReport_distance)],
    ['num', fmt.text(m.weighingReport_distanceLimit)],
  ];
  const caption = fmt.text(m.weighingReport_distancesMeasured, { armUnit: fmt.unit('arm') });
  return [sectionOf(fmt.text(m.weighingReport_distances), [tableOf(caption, columns, rows)])];
}

function lateral({ fmt, results }: PackContext, { points }: Weighing): View[] {
  const result = results.lateral;
  if (result?.basis !== 'weighed') return [];
  const arm = fmt.number('arm', result.empty.armMm, { signed: true, extra: 1 });
  const within = result.expanded ? ` ± ${fmt.number('arm', result.expanded.armMm, { extra: 1 })}` : '';
  const rows = points.map(({ name, lateralArmMm = 0 }) => [
    name,
    fmt.number('arm', lateralArmMm, { signed: true, extra: 1 }),
  ]);
  const columns: Column[] = [
    ['text', fmt.text(m.weighingReport_point)],
    ['num', fmt.text(m.loadingSheet_lateralArm)],
  ];
  const caption = fmt.text(m.loadingSheet_lateralArms, { armUnit: fmt.unit('arm') });
  return [
    sectionOf(fmt.text(m.weighingReport_lateral), [
      tableOf(caption, columns, [...rows, [fmt.text(m.weighingReport_lateralEmpty), `${arm}${within}`]]),
    ]),
  ];
}

function hang({ fmt, visit, results }: PackContext): View[] {
  const { hang: result } = results;
  const { hangBolt } = visit.aircraft;
  if (!result) return [];
  const band = hangBolt
    ? ` ${fmt.text(m.weighingExtras_band, {
        minimum: fmt.signed(hangBolt.minimumDeg),
        maximum: fmt.signed(hangBolt.maximumDeg),
      })}`
    : '';
  const rows = result.tests.map(({ state, angleDeg, isWithin }) => [
    state,
    fmt.signed(angleDeg),
    isWithin === undefined ? DASH : fmt.text(isWithin ? m.weighingExtras_within : m.weighingExtras_notWithin),
  ]);
  const columns: Column[] = [
    ['text', fmt.text(m.weighingReport_state)],
    ['num', fmt.text(m.weighingReport_angle)],
    ['text', fmt.text(m.verdict)],
  ];
  return [
    sectionOf(
      fmt.text(m.weighingReport_hang),
      [tableOf(`${fmt.text(m.weighingReport_hangNoseDown)}${band}`, columns, rows)],
      result.cg ? [hungLine(fmt, result.cg)] : [],
    ),
  ];
}

function hungLine(fmt: PackContext['fmt'], cg: NonNullable<HangResult['cg']>): string {
  const within = (valueMm: number, standardMm: number): string =>
    `${fmt.number('arm', valueMm)} ± ${fmt.measure('arm', COVERAGE_FACTOR * standardMm)}`;
  return fmt.text(m.weighingExtras_hungCg, {
    arm: within(cg.armMm, cg.standardArmMm),
    depth: within(cg.depthMm, cg.standardDepthMm),
  });
}

/** Says which effects the uncertainty does not count, because the record does not state them. */
function leftOut({ fmt, visit }: PackContext, { cgHeightMm, oilMassLimitKg, oilArmMm }: Weighing): string {
  const missing = [
    ...(cgHeightMm === undefined ? [fmt.text(m.weighingExtras_levelling)] : []),
    ...(hasOil(visit.aircraft) && (oilMassLimitKg === undefined || oilArmMm === undefined)
      ? [fmt.text(m.weighingExtras_oil)]
      : []),
  ];
  return missing.length === 0 ? '' : fmt.text(m.weighingExtras_notCounted, { missing: missing.join('; ') });
}
