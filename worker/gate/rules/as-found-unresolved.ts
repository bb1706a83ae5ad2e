import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const asFoundUnresolved: Rule = {
  code: 'AS_FOUND_UNRESOLVED',
  severity: 'caution',
  meaning: 'Something differs from the papers and nobody decided what follows',
  remedy: phrase`Decide and enter the disposition`,
  source: PRACTICE,
  check: ({ visit, say }) =>
    (visit.asFound ?? []).flatMap(({ disposition, kind }, index): Hit[] =>
      disposition
        ? []
        : [
            {
              path: ['asFound', index, 'disposition'],
              sentence: say.words`A line of the survey (${say.term(kind)}) has no disposition`,
              data: { kind },
            },
          ],
    ),
};
