import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const requiredItemRemoved: Rule = {
  code: 'REQUIRED_ITEM_REMOVED',
  severity: 'blocks',
  meaning: 'A required item was removed without a replacement',
  remedy: m.requiredItemRemoved_remedy,
  source: read('14 CFR 43.11 (placard); ML.A.403'),
  check: ({ results }) => {
    const kept = new Set(results.change.after.map(({ id }) => id));
    return hits(results.change.changes, ({ change, cameWith, listed, path }) => {
      if (change.kind !== 'removed' || !listed?.required || kept.has(listed.id)) return undefined;
      // A group is replaced as a whole: what comes in as required stands for what was.
      if (cameWith.some(({ required }) => required)) return undefined;
      return {
        path,
        sentence: said(m.requiredItemRemoved_itemRequiredTakenOut, { listed: listed.id, listed2: listed.name }),
        data: { item: listed.id },
      };
    });
  },
};
