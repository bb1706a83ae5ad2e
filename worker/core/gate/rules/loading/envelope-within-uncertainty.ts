import { cgMm } from '../../../calc/mass/mass-moment.ts';
import { isAtLeast } from '../../../calc/numbers/limit-met.ts';
import { COVERAGE_FACTOR, combine } from '../../../calc/weighing/uncertainty.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { describeLoading } from '../../describe-loading.ts';
import { hits } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const envelopeWithinUncertainty: Rule = {
  code: 'ENVELOPE_WITHIN_UNCERTAINTY',
  severity: 'caution',
  meaning: 'A permitted loading is nearer to a limit than the uncertainty of the empty centre of gravity',
  remedy: m.envelopeWithinUncertainty_remedy,
  source: read('JCGM 100:2008'),
  check: ({ visit, results }) => {
    const { weighing, loading } = results;
    if (!weighing) return undefined;
    return hits(loading?.extremes?.margins, ({ side, margin, loading: at }) => {
      if (side === 'below' || side === 'above') return undefined;
      // What is unknown of the empty aircraft, propagated to the loaded one.
      const uncertaintyMm = COVERAGE_FACTOR * combine(weighing.budget, at.massKg, cgMm(at)).armMm;
      if (!isAtLeast(margin, 0) || isAtLeast(margin, uncertaintyMm)) return undefined;
      const [marginText, uncertaintyText] = figure.apart('arm', margin, uncertaintyMm, { extra: 1 });
      return {
        path: ['aircraft', 'envelope'],
        sentence: said(m.envelopeWithinUncertainty_staysInsideLimitUncertainty, {
          describeLoading: describeLoading(visit, at),
          margin: marginText,
          side: termOf(side),
          uncertainty: uncertaintyText,
        }),
        data: { side, margin, uncertaintyMm },
      };
    });
  },
};
