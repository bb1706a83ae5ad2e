import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const controlCheckedByOne: Rule = {
  code: 'CONTROL_CHECKED_BY_ONE',
  severity: 'blocks',
  meaning: 'A control was proved by one person, or by the same person twice',
  remedy: phrase`Have a second person watch the surface`,
  source: read('145.A.48 and its acceptable means (independent inspection)'),
  check: ({ visit, say }) =>
    (visit.controls?.checks ?? []).flatMap(({ axis, by, secondBy }, index): Hit[] =>
      secondBy && secondBy !== by
        ? []
        : [
            {
              path: ['controls', 'checks', index, 'secondBy'],
              sentence: say.words`${say.term(axis)} was proved by one person only`,
              data: { axis },
            },
          ],
    ),
};
