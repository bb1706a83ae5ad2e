import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const unrestrainedRun: Rule = {
  code: 'UNRESTRAINED_RUN',
  severity: 'blocks',
  meaning: 'The restraint of the aircraft during an engine run is not recorded',
  remedy: m.unrestrainedRun_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['engineRuns'], visit.engineRuns, ({ restraint, when }) => {
      if (restraint) return undefined;
      return {
        field: 'restraint',
        sentence:
          when === 'before' ? said(m.unrestrainedRun_runBeforeWorkNot) : said(m.unrestrainedRun_runAfterWorkNot),
      };
    }),
};
