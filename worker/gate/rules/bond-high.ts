import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

const LIMIT_MILLIOHM = 2.5;

export const bondHigh: Rule = {
  code: 'BOND_HIGH',
  severity: 'caution',
  meaning: 'The bond of an antenna to its ground plane resists too much',
  remedy: phrase`Clean the faces, bond again and measure`,
  source: read('AC 43.13-1B 11-188f: less than 2.5 milliohm'),
  check: ({ visit, say }) =>
    (visit.antennas?.items ?? []).flatMap(({ name, bondMilliohm }, index): Hit[] => {
      if (bondMilliohm === undefined || bondMilliohm < LIMIT_MILLIOHM) return [];
      const [valueText, limitText] = say.plainApart(bondMilliohm, LIMIT_MILLIOHM, 1);
      return [
        {
          path: ['antennas', 'items', index, 'bondMilliohm'],
          sentence: say.words`${name}: bond ${valueText} mΩ; it has to be below ${limitText} mΩ`,
          data: { bondMilliohm, limitMilliohm: LIMIT_MILLIOHM },
        },
      ];
    }),
};
