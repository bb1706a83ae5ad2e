import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const baselineMissing: Rule = {
  code: 'BASELINE_MISSING',
  severity: 'blocks',
  meaning: 'The record has no empty mass to start from',
  remedy: m.baselineMissing_remedy,
  source: PRACTICE,
  check: ({ visit, results }) => {
    const { baseline } = visit;
    const isStated = visit.weighing || (baseline?.emptyArmMm ?? baseline?.emptyMomentKgMm) !== undefined;
    if (!results.schedule && !isStated)
      return {
        path: ['baseline'],
        sentence: said(m.baselineMissing_recordNeitherWeighingNor),
      };
    const changes = (visit.modifications ?? []).some(({ changes: made }) =>
      made.some(({ kind }) => kind !== 'installed'),
    );
    if (!changes || baseline?.equipment) return undefined;
    return {
      path: ['baseline', 'equipment'],
      sentence: said(m.baselineMissing_itemsTakenOutMoved),
    };
  },
};
