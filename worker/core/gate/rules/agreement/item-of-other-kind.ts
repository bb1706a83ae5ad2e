import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { hits } from '../../hits.ts';
import { itemReferences } from '../../item-references.ts';
import { kindsExpected } from '../../kinds-expected.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const itemOfOtherKind: Rule = {
  code: 'ITEM_OF_OTHER_KIND',
  severity: 'blocks',
  meaning: 'Battery, source, load, antenna, device or test names an item of a kind that cannot be that',
  remedy: m.itemOfOtherKind_remedy,
  source: PRACTICE,
  check: ({ visit, results }) =>
    hits(itemReferences(visit), (place) => {
      const item = results.change.after.find(({ id }) => id === place.value);
      const kind = item?.equipmentKind;
      const expected = kindsExpected(place);
      if (!item || !kind || kind === 'other' || !expected || expected.includes(kind)) return undefined;
      return {
        path: place.path,
        sentence: said(m.itemOfOtherKind_entryNamesKind, {
          item: item.id,
          name: item.name,
          kind: termOf(kind),
          entry: termOf(String(place.path[0])),
        }),
        data: { item: item.id, kind },
      };
    }),
};
