import { PRACTICE, type Rule } from '../rule.ts';

export const baselineMissing: Rule = {
  code: 'BASELINE_MISSING',
  severity: 'blocks',
  meaning: 'There is no empty mass to start from',
  remedy: 'Give the last schedule as baseline, or weigh the aircraft',
  source: PRACTICE,
  check: ({ visit, results }) => {
    if (!results.schedule)
      return [
        {
          path: ['baseline'],
          sentence: 'The record has neither a weighing nor a baseline with a mass and an arm or moment',
        },
      ];
    const changes = (visit.modifications ?? []).some(({ changes: made }) =>
      made.some(({ kind }) => kind !== 'installed'),
    );
    if (!changes || visit.baseline?.equipment) return [];
    return [
      {
        path: ['baseline', 'equipment'],
        sentence: 'Items were taken out or moved, but the record has no equipment list',
      },
    ];
  },
};
