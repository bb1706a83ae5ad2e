import { LOW_VOLTAGE_V, warnsInTime } from '../../calc/electrical/monitoring.ts';
import { phrase } from '../../words/words.ts';
import { type Rule, read } from '../rule.ts';

export const lowVoltageWarningLate: Rule = {
  code: 'LOW_VOLTAGE_WARNING_LATE',
  severity: 'caution',
  meaning: 'The low-voltage warning comes on too late, or nobody stated when it does',
  remedy: phrase`Set it to 13 V on a 14 V system, 26 V on a 28 V system, and enter what was measured`,
  source: read('AC 43.13-1B 11-35b: below 13 V on a 14-volt system, 26 V on a 28-volt system'),
  check: ({ visit, say }) => {
    const { electrical } = visit;
    if (!electrical?.lowVoltageWarning?.isFitted || warnsInTime(electrical)) return [];
    const leastV = LOW_VOLTAGE_V[electrical.system];
    const { setPointV } = electrical.lowVoltageWarning;
    const least = say.plain(leastV, 1);
    const sentence =
      setPointV === undefined
        ? say.words`Nobody stated when the low-voltage warning comes on; it should at ${least} V`
        : say.words`At ${say.plain(setPointV, 1)} V the low-voltage warning comes on; it should at ${least} V`;
    return [
      {
        path: ['electrical', 'lowVoltageWarning', 'setPointV'],
        sentence,
        data: { leastV, ...(setPointV !== undefined && { setPointV }) },
      },
    ];
  },
};
