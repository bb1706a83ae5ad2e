import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const unrestrainedRun: Rule = {
  code: 'UNRESTRAINED_RUN',
  severity: 'blocks',
  meaning: 'A run of the engine does not say how the aircraft was held',
  remedy: phrase`Never start an engine with the aircraft unrestrained; enter how it was held`,
  source: PRACTICE,
  check: ({ visit, say }) =>
    (visit.engineRuns ?? []).flatMap(({ restraint, when }, index): Hit[] =>
      restraint
        ? []
        : [
            {
              path: ['engineRuns', index, 'restraint'],
              sentence:
                when === 'before'
                  ? say.words`The run before the work does not say how the aircraft was held`
                  : say.words`The run after the work does not say how the aircraft was held`,
            },
          ],
    ),
};
