import type { LimitCheck } from '../../../calc/surveillance/surveillance-result.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { type Said, said, type Value } from '../../../text/message.ts';
import { nameOfFigure } from '../../figure-name.ts';
import { type EntryHit, hits, hitsIn } from '../../hits.ts';
import { rangeText, valueOutside } from '../../range-text.ts';
import { PRACTICE, type Rule } from '../../rule.ts';
import { ofTested } from '../../tested-name.ts';

export const measurementOutsideLimits: Rule = {
  code: 'MEASUREMENT_OUTSIDE_LIMITS',
  severity: 'blocks',
  meaning: 'A torque, a heading of a magnetometer, or a vibration or track split after balancing is outside its limits',
  remedy: m.measurementOutsideLimits_remedy,
  source: PRACTICE,
  check: ({ visit, results }) => {
    const { torques, magnetometers, balances } = results.measurements ?? {};
    const record = visit.measurements ?? {};
    return [
      ...hitsIn(['measurements', 'torques'], torques, (measured, index) =>
        hitOf(measured, { name: record.torques?.[index]?.fastener }),
      ),
      ...hitsIn(['measurements', 'magnetometers'], magnetometers, ({ figures }, index) =>
        hits<LimitCheck, EntryHit>(figures, (measured, reading) => {
          if (measured.isWithin) return undefined;
          return {
            field: ['readings', reading],
            sentence: said(m.measurementOutsideLimits_heading, {
              name: ofTested(record.magnetometers?.[index], nameOfFigure(measured.figure)),
              heading: figure.plain(measured.at?.value ?? 0, 0),
              value: valueOutside(measured, 1),
              range: rangeText(measured),
            }),
            data: { value: measured.value },
          };
        }),
      ),
      ...hitsIn(['measurements', 'balances'], balances, ({ figures }, index) => {
        const balance = record.balances?.[index];
        // An adjustment follows the readings before it, if the record has those after it.
        if (
          balance?.when === 'before' &&
          record.balances?.some(({ of, when }) => of === balance.of && when === 'after')
        )
          return undefined;
        return hits<LimitCheck, EntryHit>(figures, (measured, reading) => {
          const hit = hitOf(measured, { name: balance?.readings[reading]?.place }, 2);
          return hit && { field: ['readings', reading], ...hit };
        });
      }),
    ];
  },
};

function hitOf(
  measured: LimitCheck,
  tested: { name: string | undefined },
  decimals = 1,
): { sentence: Said; data: { value: number } } | undefined {
  if (measured.isWithin) return undefined;
  const name: Value = ofTested(tested, nameOfFigure(measured.figure));
  return {
    sentence: said(m.outsideLimits, {
      figure: name,
      value: valueOutside(measured, decimals),
      unit: measured.unit,
      range: rangeText(measured),
    }),
    data: { value: measured.value },
  };
}
