import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const modificationNotInspected: Rule = {
  code: 'MODIFICATION_NOT_INSPECTED',
  severity: 'blocks',
  meaning: 'A modification names no inspector, or one who did the work',
  remedy: 'Have another person inspect it',
  source: PRACTICE,
  check: ({ visit }) =>
    (visit.modifications ?? []).flatMap(({ id, by, inspectedBy }, index): Hit[] => {
      if (inspectedBy && !by.includes(inspectedBy)) return [];
      const sentence = inspectedBy
        ? `Modification ${id} was inspected by a person who did the work`
        : `Modification ${id} was not inspected`;
      return [{ path: ['modifications', index, 'inspectedBy'], sentence, data: { modification: id } }];
    }),
};
