import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const modificationNotInspected: Rule = {
  code: 'MODIFICATION_NOT_INSPECTED',
  severity: 'blocks',
  meaning: 'A modification names no inspector, or one who did the work',
  remedy: phrase`Have another person inspect it`,
  source: PRACTICE,
  check: ({ visit, say }) =>
    (visit.modifications ?? []).flatMap(({ id, by, inspectedBy }, index): Hit[] => {
      if (inspectedBy && !by.includes(inspectedBy)) return [];
      const sentence = inspectedBy
        ? say.words`Modification ${id} was inspected by a person who did the work`
        : say.words`Modification ${id} was not inspected`;
      return [{ path: ['modifications', index, 'inspectedBy'], sentence, data: { modification: id } }];
    }),
};
