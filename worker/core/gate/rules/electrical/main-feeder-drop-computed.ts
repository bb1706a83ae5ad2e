import { isAtMost } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

/** A caution, because the source says that the drop should not be more; a measured drop replaces the computed one. */
export const mainFeederDropComputed: Rule = {
  code: 'MAIN_FEEDER_DROP_COMPUTED',
  severity: 'caution',
  meaning: 'A main power wire, as computed and not measured, loses more than 2 % of the regulated voltage',
  remedy: m.mainFeederDropComputed_remedy,
  source: read(
    'FAA-H-8083-31 chapter 9, voltage drop in wires: should not exceed 2 % from source or battery to the bus',
  ),
  check: ({ visit, results }) =>
    hitsIn(['electrical', 'circuits'], visit.electrical?.circuits, ({ name, mainFeeder, measuredDropV }, index) => {
      const found = results.electrical?.circuits[index]?.continuousDrop;
      if (!mainFeeder || !found || measuredDropV !== undefined || isAtMost(found.dropV, found.limitV)) return undefined;
      const [drop, limit] = figure.plainApart(found.dropV, found.limitV, 2);
      return {
        field: 'measuredDropV',
        sentence: said(m.mainFeederDropComputed_mainPowerWireVoltage, { name, drop, limit }),
        data: { dropV: found.dropV, limitV: found.limitV },
      };
    }),
};
