import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const runConditionsUnstated: Rule = {
  code: 'RUN_CONDITIONS_UNSTATED',
  severity: 'note',
  meaning: 'A run has no air temperature and pressure, so its figures compare badly',
  remedy: phrase`Enter them next time`,
  source: read('South African 43.04.9 (ambient temperature and pressure recorded)'),
  check: ({ visit, say }) =>
    (visit.engineRuns ?? []).flatMap(({ when, airTemperatureC, pressureHpa }, index): Hit[] =>
      airTemperatureC !== undefined && pressureHpa !== undefined
        ? []
        : [
            {
              path: ['engineRuns', index],
              sentence:
                when === 'before'
                  ? say.words`The run before the work has no air temperature and pressure`
                  : say.words`The run after the work has no air temperature and pressure`,
            },
          ],
    ),
};
