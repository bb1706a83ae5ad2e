import { phrase } from '../../words/words.ts';
import { type Hit, memory, type Rule } from '../rule.ts';

export const partWithoutReleaseDocument: Rule = {
  code: 'PART_WITHOUT_RELEASE_DOCUMENT',
  severity: 'blocks',
  meaning: 'A part was fitted without the paper that says where it comes from',
  remedy: phrase`Get the document, or take the part out`,
  source: memory('ML.A.501'),
  check: ({ visit, say }) =>
    (visit.parts ?? []).flatMap(({ id, description, releaseDocument }, index): Hit[] =>
      releaseDocument
        ? []
        : [
            {
              path: ['parts', index, 'releaseDocument'],
              sentence: say.words`Part ${id}, ${description}, has no release document`,
              data: { part: id },
            },
          ],
    ),
};
