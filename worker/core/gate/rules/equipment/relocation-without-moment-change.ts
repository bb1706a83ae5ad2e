import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const relocationWithoutMomentChange: Rule = {
  code: 'RELOCATION_WITHOUT_MOMENT_CHANGE',
  severity: 'caution',
  meaning: 'An item was moved, but its arm is the same',
  remedy: m.relocationWithoutMomentChange_remedy,
  source: PRACTICE,
  check: ({ results }) =>
    hits(results.change.changes, ({ change, listed, path }) => {
      if (change.kind !== 'relocated' || !listed || change.armMm !== listed.armMm) return undefined;
      return {
        path: [...path, 'arm'],
        sentence: said(m.relocationWithoutMomentChange_itemMovedButArm, {
          item: change.item,
          arm: figure.measure('arm', change.armMm),
        }),
        data: { item: change.item, armMm: change.armMm },
      };
    }),
};
