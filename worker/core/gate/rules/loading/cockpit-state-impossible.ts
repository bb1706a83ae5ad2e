import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const cockpitStateImpossible: Rule = {
  code: 'COCKPIT_STATE_IMPOSSIBLE',
  severity: 'caution',
  meaning: 'In one state of ballast or engine no pilot may fly',
  remedy: m.cockpitStateImpossible_remedy,
  source: PRACTICE,
  check: ({ results }) =>
    hits(results.loading?.cockpitLoads, ({ state, minimum }, index) =>
      minimum
        ? undefined
        : {
            path: state === '' ? ['aircraft', 'stations'] : ['aircraft', 'cockpitStates', index],
            sentence:
              state === ''
                ? said(m.cockpitStateImpossible_nobody)
                : said(m.cockpitStateImpossible_nobodyInState, { state }),
            data: { state },
          },
    ),
};
