import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

export const mainFeederDropExceeded: Rule = {
  code: 'MAIN_FEEDER_DROP_EXCEEDED',
  severity: 'blocks',
  meaning: 'A main power wire, as measured, loses more than 2 % of the regulated voltage',
  remedy: m.mainFeederDropExceeded_remedy,
  source: read('FAA-H-8083-31 chapter 9, voltage drop in wires: 2 % from source or battery to the bus'),
  check: ({ visit, results }) =>
    hitsIn(['electrical', 'circuits'], visit.electrical?.circuits, ({ name, mainFeeder, measuredDropV }, index) => {
      const limitV = results.electrical?.circuits[index]?.measuredLimitV;
      if (!mainFeeder || limitV === undefined || measuredDropV === undefined || isAtMost(measuredDropV, limitV))
        return undefined;
      const [drop, limit] = figure.plainApart(measuredDropV, limitV, 2);
      return {
        field: 'measuredDropV',
        sentence: said(m.mainFeederDropExceeded_mainPowerWireVoltage, { name, drop, limit }),
        data: { dropV: measuredDropV, limitV },
      };
    }),
};
