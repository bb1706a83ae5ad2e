import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

export const emptyMassNotPositive: Rule = {
  code: 'EMPTY_MASS_NOT_POSITIVE',
  severity: 'blocks',
  meaning: 'The weighing, or the baseline with all changes, gives no positive empty mass',
  remedy: m.emptyMassNotPositive_remedy,
  source: PRACTICE,
  check: ({ visit, results }) => {
    const { baseline, weighing } = visit;
    const hits: Hit[] = [];
    if (weighing && !results.weighing)
      hits.push({ path: ['weighing'], sentence: said(m.emptyMassNotPositive_readingsLessTareItems) });
    const isStated = (baseline?.emptyArmMm ?? baseline?.emptyMomentKgMm) !== undefined;
    if (isStated && !results.prediction)
      hits.push({
        path: ['baseline', 'emptyMass'],
        sentence: said(m.emptyMassNotPositive_emptyMassPapersAll),
      });
    return hits;
  },
};
