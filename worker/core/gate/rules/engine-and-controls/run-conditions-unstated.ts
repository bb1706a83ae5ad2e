import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, type Rule, read } from '../../rule.ts';

export const runConditionsUnstated: Rule = {
  code: 'RUN_CONDITIONS_UNSTATED',
  severity: 'note',
  meaning: 'A run has no air temperature and pressure, so its figures compare badly',
  remedy: m.runConditionsUnstated_remedy,
  source: read('South African 43.04.9 (ambient temperature and pressure recorded)'),
  check: ({ visit }) =>
    (visit.engineRuns ?? []).flatMap(({ when, airTemperatureC, pressureHpa }, index): Hit[] =>
      airTemperatureC !== undefined && pressureHpa !== undefined
        ? []
        : [
            {
              path: ['engineRuns', index],
              sentence:
                when === 'before'
                  ? said(m.runConditionsUnstated_runBeforeWorkNo)
                  : said(m.runConditionsUnstated_runAfterWorkNo),
            },
          ],
    ),
};
