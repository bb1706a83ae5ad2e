import { GROUND_RETURN_LIMIT_MILLIOHM as LIMIT_MILLIOHM } from '../../../calc/electrical/voltage-drop.ts';
import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const groundReturnHigh: Rule = {
  code: 'GROUND_RETURN_HIGH',
  severity: 'caution',
  meaning: 'The resistance of the ground return of a circuit is over 5 milliohm',
  remedy: m.groundReturnHigh_remedy,
  source: read('FAA-H-8083-31 chapter 9, voltage drop in wires: 0.005 ohm from ground point to ground terminal'),
  check: ({ visit }) =>
    hitsIn(['electrical', 'circuits'], visit.electrical?.circuits, ({ name, groundReturnMilliohm }) => {
      if (groundReturnMilliohm === undefined || isAtMost(groundReturnMilliohm, LIMIT_MILLIOHM)) return undefined;
      const [valueText, limitText] = figure.plainApart(groundReturnMilliohm, LIMIT_MILLIOHM, 1);
      return {
        field: 'groundReturnMilliohm',
        sentence: said(m.groundReturnHigh_circuitGroundReturnM, { name, value: valueText, limit: limitText }),
        data: { groundReturnMilliohm, limitMilliohm: LIMIT_MILLIOHM },
      };
    }),
};
