import { classDataOf } from '../../../record/classes/index.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Rule, read } from '../../rule.ts';

export const lateralLimitsMissing: Rule = {
  code: 'LATERAL_LIMITS_MISSING',
  severity: 'blocks',
  meaning: 'The class owes a lateral schedule, and the record has neither limits nor the statement that there are none',
  remedy: m.lateralLimitsMissing_remedy,
  source: read('14 CFR 27.27 (longitudinal and, where critical, lateral limits)'),
  check: ({ visit, results }) => {
    const { aircraft } = visit;
    if (!classDataOf(aircraft).owes.lateral || aircraft.noLateralLimits) return undefined;
    if (!aircraft.lateralEnvelope)
      return { path: ['aircraft', 'lateralEnvelope'], sentence: said(m.lateralLimitsMissing_noLimits) };
    return results.lateral
      ? undefined
      : { path: ['baseline', 'emptyLateralArm'], sentence: said(m.lateralLimitsMissing_noEmptyArm) };
  },
};
