import { isAtLeast } from '../../calc/limit-met.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';
import { wireName } from '../wire-name.ts';

export const insulationLow: Rule = {
  code: 'INSULATION_LOW',
  severity: 'caution',
  meaning: 'The insulation of a wire is below the limit of the record',
  remedy: phrase`Find the damage, dry or replace the wire, and measure again`,
  source: PRACTICE,
  check: ({ visit, say }) => {
    const limitMohm = visit.wiring?.test?.insulationLimitMohm;
    if (limitMohm === undefined) return [];
    return (visit.wiring?.wires ?? []).flatMap((wire, index): Hit[] => {
      const { insulationMohm } = wire;
      if (wire.change === 'removed' || insulationMohm === undefined || isAtLeast(insulationMohm, limitMohm)) return [];
      const [valueText, limitText] = say.plainApart(insulationMohm, limitMohm, 1);
      return [
        {
          path: ['wiring', 'wires', index, 'insulationMohm'],
          sentence: say.words`Insulation of wire ${wireName(wire, say)}: ${valueText} MΩ; the limit is ${limitText} MΩ`,
          data: { insulationMohm, limitMohm },
        },
      ];
    });
  },
};
