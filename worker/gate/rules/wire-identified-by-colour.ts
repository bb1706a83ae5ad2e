import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const wireIdentifiedByColour: Rule = {
  code: 'WIRE_IDENTIFIED_BY_COLOUR',
  severity: 'caution',
  meaning: 'A wire that stays is known by its colour alone',
  remedy: phrase`Prove it by continuity, end to end: colours in old aircraft mean nothing`,
  source: PRACTICE,
  check: ({ visit, say }) =>
    (visit.wiring?.found ?? []).flatMap(({ id, decision, identifiedBy }, index): Hit[] => {
      if (decision === 'removed' || identifiedBy !== 'colour') return [];
      return [
        {
          path: ['wiring', 'found', index, 'identifiedBy'],
          sentence: say.words`Wire ${id} stays, and only its colour says what it is`,
          data: { wire: id },
        },
      ];
    }),
};
