import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const modificationWithoutBasis: Rule = {
  code: 'MODIFICATION_WITHOUT_BASIS',
  severity: 'blocks',
  meaning: 'A modification names no data that the work follows',
  remedy: phrase`Name the document and its revision`,
  source: read('14 CFR 43.9 and 91.417 (description or reference to acceptable data)'),
  check: ({ visit, say }) =>
    (visit.modifications ?? []).flatMap(({ id, basis }, index): Hit[] =>
      basis
        ? []
        : [
            {
              path: ['modifications', index, 'basis'],
              sentence: say.words`Modification ${id} names no data that the work follows`,
              data: { modification: id },
            },
          ],
    ),
};
