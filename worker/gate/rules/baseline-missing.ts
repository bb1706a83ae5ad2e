import { phrase } from '../../words/words.ts';
import { PRACTICE, type Rule } from '../rule.ts';

export const baselineMissing: Rule = {
  code: 'BASELINE_MISSING',
  severity: 'blocks',
  meaning: 'There is no empty mass to start from',
  remedy: phrase`Give the last schedule as baseline, or weigh the aircraft`,
  source: PRACTICE,
  check: ({ visit, results, say }) => {
    const { baseline } = visit;
    const isStated = visit.weighing || (baseline?.emptyArmMm ?? baseline?.emptyMomentKgMm) !== undefined;
    if (!results.schedule && !isStated)
      return [
        {
          path: ['baseline'],
          sentence: say.words`The record has neither a weighing nor a baseline with a mass and an arm or moment`,
        },
      ];
    const changes = (visit.modifications ?? []).some(({ changes: made }) =>
      made.some(({ kind }) => kind !== 'installed'),
    );
    if (!changes || baseline?.equipment) return [];
    return [
      {
        path: ['baseline', 'equipment'],
        sentence: say.words`Items were taken out or moved, but the record has no equipment list`,
      },
    ];
  },
};
