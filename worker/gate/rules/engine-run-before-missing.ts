import { phrase } from '../../words/words.ts';
import { PRACTICE, type Rule } from '../rule.ts';

export const engineRunBeforeMissing: Rule = {
  code: 'ENGINE_RUN_BEFORE_MISSING',
  severity: 'caution',
  meaning: 'No run of the engine before the work is recorded, so nothing tells what changed',
  remedy: phrase`Next time run it before it is touched`,
  source: PRACTICE,
  check: ({ visit, say }) =>
    visit.engineRuns && !visit.engineRuns.some(({ when }) => when === 'before')
      ? [{ path: ['engineRuns'], sentence: say.words`No run of the engine before the work is recorded` }]
      : [],
};
