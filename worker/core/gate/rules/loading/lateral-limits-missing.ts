import { classDataOf } from '../../../record/classes/index.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Rule, read } from '../../rule.ts';

export const lateralLimitsMissing: Rule = {
  code: 'LATERAL_LIMITS_MISSING',
  severity: 'blocks',
  meaning: 'The class has lateral limits, and the record states neither them nor that the manual has none',
  remedy: m.lateralLimitsMissing_remedy,
  source: read('14 CFR 27.27 (longitudinal and, where critical, lateral limits)'),
  check: ({ visit, results }) => {
    const { aircraft } = visit;
    if (!classDataOf(aircraft).requires.lateral || aircraft.noLateralLimits) return undefined;
    if (!aircraft.lateralEnvelope)
      return { path: ['aircraft', 'lateralEnvelope'], sentence: said(m.lateralLimitsMissing_noLimits) };
    return results.lateral
      ? undefined
      : { path: ['baseline', 'emptyLateralArm'], sentence: said(m.lateralLimitsMissing_noEmptyArm) };
  },
};
