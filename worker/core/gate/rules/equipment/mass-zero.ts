import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Rule, read } from '../../rule.ts';

export const massZero: Rule = {
  code: 'MASS_ZERO',
  severity: 'caution',
  meaning: 'An installed item has no mass',
  remedy: m.massZero_remedy,
  source: read('FAA-H-8083-1B ch. 7'),
  check: ({ results }) =>
    results.change.lines
      .filter(({ kind, massKg }) => kind === 'installed' && massKg === 0)
      .map(({ item, name = '', pointer }) => ({
        path: `${pointer}/mass`,
        sentence: said(m.massZero_itemPutNoMass, { item, name }),
        data: { item },
      })),
};
