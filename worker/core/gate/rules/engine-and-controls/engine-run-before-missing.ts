import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const engineRunBeforeMissing: Rule = {
  code: 'ENGINE_RUN_BEFORE_MISSING',
  severity: 'caution',
  meaning: 'No engine run before the work is recorded, so changes cannot be seen',
  remedy: m.engineRunBeforeMissing_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    visit.engineRuns && !visit.engineRuns.some(({ when }) => when === 'before')
      ? { path: ['engineRuns'], sentence: said(m.engineRunBeforeMissing_noRunEngineBefore) }
      : undefined,
};
