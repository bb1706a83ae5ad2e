import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const installedItemAlreadyListed: Rule = {
  code: 'INSTALLED_ITEM_ALREADY_LISTED',
  severity: 'blocks',
  meaning: 'An item was installed, or found, under a line number that is already used',
  remedy: m.installedItemAlreadyListed_remedy,
  source: PRACTICE,
  check: ({ results }) => {
    const { corrections, changes } = results.change;
    const entered = corrections.map(({ path, taken }) => ({ path, taken }));
    const put = changes.map(({ change, path, taken }) => ({
      path: change.kind === 'replaced' ? [...path, 'by'] : path,
      taken,
    }));
    return hits([...entered, ...put], ({ path, taken }) => {
      if (taken === undefined) return undefined;
      return {
        path: [...path, 'id'],
        sentence: said(m.installedItemAlreadyListed_equipmentListAlreadyItem, { taken }),
        data: { item: taken },
      };
    });
  },
};
