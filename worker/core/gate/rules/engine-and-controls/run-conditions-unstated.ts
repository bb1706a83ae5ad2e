import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const runConditionsUnstated: Rule = {
  code: 'RUN_CONDITIONS_UNSTATED',
  severity: 'note',
  meaning: 'Air temperature and pressure of an engine run are missing, so its figures compare badly',
  remedy: m.runConditionsUnstated_remedy,
  source: read('South African 43.04.9 (ambient temperature and pressure recorded)'),
  check: ({ visit }) =>
    hitsIn(['engineRuns'], visit.engineRuns, ({ when, airTemperatureC, pressureHpa }) => {
      if (airTemperatureC !== undefined && pressureHpa !== undefined) return undefined;
      return {
        sentence:
          when === 'before'
            ? said(m.runConditionsUnstated_runBeforeWorkNo)
            : said(m.runConditionsUnstated_runAfterWorkNo),
      };
    }),
};
