import { isAtLeast } from '../../../calc/numbers/limit-met.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';
import { wireName } from '../../wire-name.ts';

export const insulationLow: Rule = {
  code: 'INSULATION_LOW',
  severity: 'caution',
  meaning: 'The insulation of a wire is below the limit of the record',
  remedy: m.insulationLow_remedy,
  source: PRACTICE,
  check: ({ visit }) => {
    const limitMohm = visit.wiring?.test?.insulationLimitMohm;
    if (limitMohm === undefined) return undefined;
    return hitsIn(['wiring', 'wires'], visit.wiring?.wires, (wire) => {
      const { insulationMohm } = wire;
      if (wire.change === 'removed' || insulationMohm === undefined || isAtLeast(insulationMohm, limitMohm))
        return undefined;
      const [valueText, limitText] = figure.plainApart(insulationMohm, limitMohm, 1);
      return {
        field: 'insulationMohm',
        sentence: said(m.insulationLow_insulationWireMLimit, {
          wire: wireName(wire),
          value: valueText,
          limit: limitText,
        }),
        data: { insulationMohm, limitMohm },
      };
    });
  },
};
