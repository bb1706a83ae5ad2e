import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const supplementOwed: Rule = {
  code: 'SUPPLEMENT_OWED',
  severity: 'blocks',
  meaning: 'The flight manual lacks a supplement for a modification, and nobody stated that none is needed',
  remedy: phrase`Put the supplement in the manual, or state that nothing changes for the pilot`,
  source: read('CS-STAN (manual supplement)'),
  check: ({ visit, say }) =>
    (visit.modifications ?? []).flatMap(({ id, supplement, noSupplementNeeded }, index): Hit[] => {
      if (supplement?.state === 'in-place' || (!supplement && noSupplementNeeded)) return [];
      const sentence = supplement
        ? say.words`Modification ${id}: supplement “${supplement.text}” is owed`
        : say.words`Modification ${id} says nothing about a manual supplement`;
      return [{ path: ['modifications', index, 'supplement'], sentence, data: { modification: id } }];
    }),
};
