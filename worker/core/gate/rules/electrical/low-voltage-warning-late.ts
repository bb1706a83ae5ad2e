import { LOW_VOLTAGE_V, warnsInTime } from '../../../calc/electrical/monitoring.ts';
import * as figure from '../../../text/figure.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Rule, read } from '../../rule.ts';

export const lowVoltageWarningLate: Rule = {
  code: 'LOW_VOLTAGE_WARNING_LATE',
  severity: 'caution',
  meaning: 'The low-voltage warning comes on too late, or its set point is not stated',
  remedy: m.lowVoltageWarningLate_remedy,
  source: read('AC 43.13-1B 11-35b: below 13 V on a 14-volt system, 26 V on a 28-volt system'),
  check: ({ visit }) => {
    const { electrical } = visit;
    if (!electrical?.lowVoltageWarning?.isFitted || warnsInTime(electrical)) return undefined;
    const leastV = LOW_VOLTAGE_V[electrical.system];
    const { setPointV } = electrical.lowVoltageWarning;
    const min = figure.plain(leastV, 1);
    const sentence =
      setPointV === undefined
        ? said(m.lowVoltageWarningLate_nobodyStatedWhenLow, { min })
        : said(m.lowVoltageWarningLate_vLowVoltageWarning, {
            setPointV: figure.plainApart(setPointV, leastV, 1)[0],
            min,
          });
    return {
      path: ['electrical', 'lowVoltageWarning', 'setPointV'],
      sentence,
      data: { leastV, ...(setPointV !== undefined && { setPointV }) },
    };
  },
};
