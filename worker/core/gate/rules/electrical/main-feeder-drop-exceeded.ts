import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const mainFeederDropExceeded: Rule = {
  code: 'MAIN_FEEDER_DROP_EXCEEDED',
  severity: 'blocks',
  meaning: 'A main power wire loses more than 2 % of the regulated voltage at rated current',
  remedy: m.mainFeederDropExceeded_remedy,
  source: read('FAA-H-8083-31 chapter 9, voltage drop in wires: 2 % from source or battery to the bus'),
  check: ({ visit, results }) =>
    hitsIn(['electrical', 'circuits'], visit.electrical?.circuits, ({ name, mainFeeder, measuredDropV }, index) => {
      const result = results.electrical?.circuits[index];
      if (!mainFeeder || !result) return undefined;
      const limitV = result.measuredLimitV;
      return [
        { what: 'computed', dropV: result.continuousDrop?.dropV ?? 0 },
        { what: 'measured', dropV: measuredDropV ?? 0 },
      ]
        .filter(({ dropV }) => !isAtMost(dropV, limitV))
        .map(({ what, dropV }) => {
          const [dropText, limitText] = figure.plainApart(dropV, limitV, 2);
          return {
            sentence: said(m.mainFeederDropExceeded_mainPowerWireVoltage, {
              name,
              what: termOf(what),
              drop: dropText,
              limit: limitText,
            }),
            data: { dropV, limitV },
          };
        });
    }),
};
