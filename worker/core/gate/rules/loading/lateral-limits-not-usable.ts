import { lateralLimitsOf } from '../../../calc/lateral/lateral-envelope.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hits } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';
import { sheetsOf } from '../../sheets.ts';

export const lateralLimitsNotUsable: Rule = {
  code: 'LATERAL_LIMITS_NOT_USABLE',
  severity: 'blocks',
  meaning: 'The corners of the lateral envelope bound no area, or one over both arms that is not convex',
  remedy: m.lateralLimitsNotUsable_remedy,
  source: PRACTICE,
  check: (input) =>
    hits(sheetsOf(input), ({ path, aircraft: { lateralEnvelope } }) =>
      lateralEnvelope && !lateralLimitsOf(lateralEnvelope)
        ? { path: [...path, 'lateralEnvelope'], sentence: said(m.lateralLimitsNotUsable_corners) }
        : undefined,
    ),
};
