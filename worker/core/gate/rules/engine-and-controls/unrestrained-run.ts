import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

export const unrestrainedRun: Rule = {
  code: 'UNRESTRAINED_RUN',
  severity: 'blocks',
  meaning: 'A run of the engine does not say how the aircraft was held',
  remedy: m.unrestrainedRun_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    (visit.engineRuns ?? []).flatMap(({ restraint, when }, index): Hit[] =>
      restraint
        ? []
        : [
            {
              path: ['engineRuns', index, 'restraint'],
              sentence:
                when === 'before' ? said(m.unrestrainedRun_runBeforeWorkNot) : said(m.unrestrainedRun_runAfterWorkNot),
            },
          ],
    ),
};
