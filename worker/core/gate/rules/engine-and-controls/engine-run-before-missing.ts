import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const engineRunBeforeMissing: Rule = {
  code: 'ENGINE_RUN_BEFORE_MISSING',
  severity: 'caution',
  meaning: 'No run of the engine before the work is recorded, so nothing tells what changed',
  remedy: m.engineRunBeforeMissing_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    visit.engineRuns && !visit.engineRuns.some(({ when }) => when === 'before')
      ? [{ path: ['engineRuns'], sentence: said(m.engineRunBeforeMissing_noRunEngineBefore) }]
      : [],
};
