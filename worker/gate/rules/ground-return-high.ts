import { GROUND_RETURN_LIMIT_MILLIOHM as LIMIT_MILLIOHM } from '../../calc/electrical/voltage-drop.ts';
import { isAtMost } from '../../calc/limit-met.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const groundReturnHigh: Rule = {
  code: 'GROUND_RETURN_HIGH',
  severity: 'caution',
  meaning: 'The ground return of a circuit resists more than 5 milliohm',
  remedy: phrase`Clean and bond the ground points, or fit a return wire, and measure again`,
  source: read('FAA-H-8083-31 chapter 9, voltage drop in wires: 0.005 ohm from ground point to ground terminal'),
  check: ({ visit, say }) =>
    (visit.electrical?.circuits ?? []).flatMap(({ name, groundReturnMilliohm }, index): Hit[] => {
      if (groundReturnMilliohm === undefined || isAtMost(groundReturnMilliohm, LIMIT_MILLIOHM)) return [];
      const [valueText, limitText] = say.plainApart(groundReturnMilliohm, LIMIT_MILLIOHM, 1);
      return [
        {
          path: ['electrical', 'circuits', index, 'groundReturnMilliohm'],
          sentence: say.words`Circuit ${name}: ground return ${valueText} mΩ; ${limitText} mΩ is satisfactory`,
          data: { groundReturnMilliohm, limitMilliohm: LIMIT_MILLIOHM },
        },
      ];
    }),
};
