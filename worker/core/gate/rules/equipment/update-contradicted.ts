import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const updateContradicted: Rule = {
  code: 'UPDATE_CONTRADICTED',
  severity: 'caution',
  meaning: 'An update changes nothing, or starts from another version than the list has',
  remedy: m.updateContradicted_remedy,
  source: PRACTICE,
  check: ({ results }) =>
    hits(results.change.changes, ({ change, listed, path }) => {
      if (change.kind !== 'updated') return undefined;
      const { item, from, to, what } = change;
      if (from === to)
        return { path: [...path, 'to'], sentence: said(m.updateContradicted_nothingNew, { item, to }), data: { item } };
      const version = listed?.version;
      if (version === undefined || version === from || what === 'setting' || what === 'repair') return undefined;
      return {
        path: [...path, 'from'],
        sentence: said(m.updateContradicted_otherVersion, { item, from, version }),
        data: { item, from, version },
      };
    }),
};
