import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const relocationWithoutMomentChange: Rule = {
  code: 'RELOCATION_WITHOUT_MOMENT_CHANGE',
  severity: 'caution',
  meaning: 'An item was moved, but its arm is the same',
  remedy: phrase`Enter the arm at the new place, or accept that it moved sideways only`,
  source: PRACTICE,
  check: ({ results, say }) =>
    results.change.changes.flatMap(({ change, listed, path }): Hit[] => {
      if (change.kind !== 'relocated' || !listed || change.armMm !== listed.armMm) return [];
      return [
        {
          path: [...path, 'arm'],
          sentence: say.words`Item ${change.item} was moved, but its arm is still ${say.measure('arm', change.armMm)}`,
          data: { item: change.item, armMm: change.armMm },
        },
      ];
    }),
};
