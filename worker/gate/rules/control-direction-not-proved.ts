import { instantOf } from '../../units/calendar.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const controlDirectionNotProved: Rule = {
  code: 'CONTROL_DIRECTION_NOT_PROVED',
  severity: 'blocks',
  meaning: 'A control that was disturbed was not proved by direction afterwards',
  remedy: phrase`Move it from the seat while a second person calls what the surface does`,
  source: read('public accident reports on crossed controls after maintenance'),
  check: ({ visit, say }) =>
    (visit.controls?.disturbed ?? []).flatMap(({ axis, what, at }, index): Hit[] => {
      const proof = visit.controls?.checks.some(
        (check) => check.axis === axis && check.isDirectionRight && instantOf(check.at) >= instantOf(at),
      );
      return proof
        ? []
        : [
            {
              path: ['controls', 'disturbed', index],
              sentence: say.words`${what}: ${say.term(axis)} not proved by direction after that`,
              data: { axis },
            },
          ];
    }),
};
