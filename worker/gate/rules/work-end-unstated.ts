import { phrase } from '../../words/words.ts';
import { type Rule, read } from '../rule.ts';

export const workEndUnstated: Rule = {
  code: 'WORK_END_UNSTATED',
  severity: 'blocks',
  meaning: 'The record does not say when the work ended',
  remedy: phrase`Enter it when the last task is finished`,
  source: read('14 CFR 43.9(a)(2) as summarised (date of completion)'),
  check: ({ visit, say }) => {
    const worked = visit.modifications?.length || visit.inspection || visit.worksheet?.length;
    return worked && !visit.visit.workEndedAt
      ? [{ path: ['visit', 'workEndedAt'], sentence: say.words`The record does not say when the work ended` }]
      : [];
  },
};
