import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const continuedAirworthinessMissing: Rule = {
  code: 'CONTINUED_AIRWORTHINESS_MISSING',
  severity: 'caution',
  meaning: 'A modification says nothing about keeping it airworthy',
  remedy: phrase`Write the instructions, or “none”`,
  source: read('CS-STAN; AMC M.A.305(d)'),
  check: ({ visit, say }) =>
    (visit.modifications ?? []).flatMap(({ id, continuedAirworthiness }, index): Hit[] =>
      continuedAirworthiness?.length
        ? []
        : [
            {
              path: ['modifications', index, 'continuedAirworthiness'],
              sentence: say.words`Modification ${id} has no instructions for continued airworthiness`,
              data: { modification: id },
            },
          ],
    ),
};
