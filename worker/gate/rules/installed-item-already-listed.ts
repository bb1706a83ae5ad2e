import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const installedItemAlreadyListed: Rule = {
  code: 'INSTALLED_ITEM_ALREADY_LISTED',
  severity: 'blocks',
  meaning: 'An item was put in under a line number that is taken',
  remedy: 'Give it a line number of its own',
  source: PRACTICE,
  check: ({ results }) =>
    results.change.changes.flatMap(({ change, path, taken }): Hit[] => {
      if (taken === undefined) return [];
      const at = change.kind === 'replaced' ? [...path, 'by', 'id'] : [...path, 'id'];
      return [{ path: at, sentence: `The equipment list already has an item ${taken}`, data: { item: taken } }];
    }),
};
