import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Rule, read } from '../../rule.ts';

export const engineRunAfterMissing: Rule = {
  code: 'ENGINE_RUN_AFTER_MISSING',
  severity: 'blocks',
  meaning: 'No engine run after the work is recorded',
  remedy: m.engineRunAfterMissing_remedy,
  source: read('South African 43.04.9 and 14 CFR 43.15(c) as summarised'),
  check: ({ visit }) =>
    visit.engineRuns && !visit.engineRuns.some(({ when }) => when === 'after')
      ? { path: ['engineRuns'], sentence: said(m.engineRunAfterMissing_noRunEngineAfter) }
      : undefined,
};
