import { hasOil } from '../../calc/weighing/oil.ts';
import { COVERAGE_FACTOR } from '../../calc/weighing/uncertainty.ts';
import type { Weighing } from '../../record/visit.ts';
import * as m from '../../text/generated/messages.ts';
import type { PackContext } from '../context.ts';
import type { View } from '../render.ts';

/** Returns measured distances, the lateral result, hang tests, and what the uncertainty leaves out. */
export function weighingExtras(context: PackContext, weighing: Weighing): View {
  return {
    ...distances(context, weighing),
    ...lateral(context, weighing),
    ...hang(context),
    leftOut: leftOut(context, weighing),
  };
}

function distances({ fmt }: PackContext, { distances: measured = [] }: Weighing): View {
  return {
    hasDistances: measured.length > 0,
    distances: measured.map(({ name, distanceMm, limitMm }) => ({
      name,
      distance: fmt.number('arm', distanceMm, { extra: 1 }),
      limit: limitMm === undefined ? '' : `±${fmt.number('arm', limitMm, { extra: 1 })}`,
    })),
  };
}

function lateral({ fmt, results }: PackContext, { points }: Weighing): View {
  const result = results.lateral;
  if (result?.basis !== 'weighed') return { hasLateral: false };
  const arm = fmt.measure('arm', result.empty.armMm, { signed: true, extra: 1 });
  return {
    hasLateral: true,
    lateralPoints: points.map(({ name, lateralArmMm = 0 }) => ({
      name,
      arm: fmt.number('arm', lateralArmMm, { signed: true, extra: 1 }),
    })),
    lateralArm: result.expanded ? `${arm} ± ${fmt.measure('arm', result.expanded.armMm, { extra: 1 })}` : arm,
  };
}

function hang({ fmt, visit, results }: PackContext): View {
  const { hang: result } = results;
  const { hangBolt } = visit.aircraft;
  if (!result) return { hasHang: false };
  return {
    hasHang: true,
    hangBand: hangBolt
      ? fmt.text(m.weighingExtras_band, {
          minimum: fmt.signed(hangBolt.minimumDeg, 1),
          maximum: fmt.signed(hangBolt.maximumDeg, 1),
        })
      : '',
    hangTests: result.tests.map(({ state, angleDeg, isWithin }) => ({
      state,
      angle: fmt.signed(angleDeg, 1),
      verdict: isWithin === undefined ? '' : fmt.text(isWithin ? m.weighingExtras_within : m.weighingExtras_notWithin),
    })),
    hangCg: result.cg
      ? fmt.text(m.weighingExtras_hungCg, {
          arm: `${fmt.number('arm', result.cg.armMm)} ± ${fmt.measure('arm', COVERAGE_FACTOR * result.cg.standardArmMm)}`,
          depth: `${fmt.number('arm', result.cg.depthMm)} ± ${fmt.measure('arm', COVERAGE_FACTOR * result.cg.standardDepthMm)}`,
        })
      : '',
  };
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
