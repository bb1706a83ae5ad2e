import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const asFoundItemNotListed: Rule = {
  code: 'AS_FOUND_ITEM_NOT_LISTED',
  severity: 'blocks',
  meaning: 'The survey names an item that the equipment list does not have',
  remedy: m.asFoundItemNotListed_remedy,
  source: PRACTICE,
  check: ({ visit }) => {
    const listed = new Set((visit.baseline?.equipment ?? []).map(({ id }) => id));
    return hitsIn(['asFound'], visit.asFound, (line) => {
      if (line.kind === 'unlisted' || listed.has(line.item)) return undefined;
      return {
        field: 'item',
        sentence: said(m.asFoundItemNotListed_surveyNamesItemEquipment, { item: line.item }),
        data: { item: line.item },
      };
    });
  },
};
