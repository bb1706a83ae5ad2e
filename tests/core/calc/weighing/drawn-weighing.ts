import { standardErrorOfMean } from '../../../../worker/core/calc/weighing/uncertainty.ts';
import type { Weighing } from '../../../../worker/core/record/visit.ts';
import type { seededRandom } from '../seeded-random.ts';

type Draw = ReturnType<typeof seededRandom>;

/** A weighing as it might have come out, had every quantity been elsewhere within what is known of it (JCGM 101, clause 6). */
export function drawnWeighing(weighing: Weighing, draw: Draw): Weighing {
  const errors = new Map(weighing.scales.map(({ id, errorLimitKg }) => [id, draw.uniform(errorLimitKg)]));
  const loose = (items: Weighing['itemsAboard']): NonNullable<Weighing['itemsAboard']> =>
    (items ?? []).map((item) => ({ ...item, massKg: item.massKg + draw.uniform(item.massLimitKg ?? 0) }));
  const points = weighing.points.map((point): Weighing['points'][number] => {
    const stepKg = weighing.scales.find(({ id }) => id === point.scale)?.resolutionKg ?? 0;
    const scatterKg = draw.normal(standardErrorOfMean(point.readingsKg));
    const shiftKg = (errors.get(point.scale) ?? 0) + scatterKg;
    return {
      ...point,
      armMm: point.armMm + draw.uniform(point.armLimitMm),
      readingsKg: point.readingsKg.map((readingKg) => readingKg + shiftKg + draw.uniform(stepKg / 2)),
      ...(point.tareKg !== undefined && { tareKg: point.tareKg + draw.uniform(stepKg / 2) }),
    };
  });
  return { ...weighing, points, itemsAboard: loose(weighing.itemsAboard), itemsMissing: loose(weighing.itemsMissing) };
}
