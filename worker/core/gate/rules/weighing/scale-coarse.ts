import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits, hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

/** Largest share of the mass weighed that a scale may be in doubt by. */
const SHARES = [
  { field: 'resolution', value: 'resolutionKg', share: 0.001, message: m.scaleCoarse_step },
  { field: 'errorLimit', value: 'errorLimitKg', share: 0.002, message: m.scaleCoarse_errorLimit },
] as const;

export const scaleCoarse: Rule = {
  code: 'SCALE_COARSE',
  severity: 'caution',
  meaning: 'The step or the limit of error of a scale is too large for the mass weighed',
  remedy: m.scaleCoarse_remedy,
  source: PRACTICE,
  check: ({ visit, results }) => {
    const weighedKg = results.weighing?.asWeighed.massKg;
    if (weighedKg === undefined) return undefined;
    return hitsIn(['weighing', 'scales'], visit.weighing?.scales, (scale) =>
      hits(SHARES, ({ field, value, share, message }) => {
        const limitKg = share * weighedKg;
        if (isAtMost(scale[value], limitKg)) return undefined;
        const [valueText, limitText] = figure.apart('mass', scale[value], limitKg, { extra: 1 });
        return {
          field,
          sentence: said(message, {
            id: scale.id,
            value: valueText,
            limit: limitText,
            percent: figure.asIs(share * 100),
            weighed: figure.measure('mass', weighedKg),
          }),
          data: { scale: scale.id, valueKg: scale[value], limitKg, weighedKg },
        };
      }),
    );
  },
};
