import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const runHeldByOne: Rule = {
  code: 'RUN_HELD_BY_ONE',
  severity: 'blocks',
  meaning: 'The same person ran the engine and watched it from outside',
  remedy: m.runHeldByOne_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['engineRuns'], visit.engineRuns, ({ by, heldBy }) =>
      heldBy === by
        ? {
            field: 'heldBy',
            sentence: said(m.runHeldByOne_samePerson, { person: visit.people.find(({ id }) => id === by)?.name ?? by }),
            data: { person: by },
          }
        : undefined,
    ),
};
