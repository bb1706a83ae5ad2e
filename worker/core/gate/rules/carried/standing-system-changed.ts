import * as m from '../../../text/generated/messages.ts';
import { unreasoned } from '../../restated-parts.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const standingSystemChanged: Rule = {
  code: 'STANDING_SYSTEM_CHANGED',
  severity: 'caution',
  meaning: 'A certificate, bulletin or system differs from the standing file, without a reason',
  remedy: m.standingSystemChanged_remedy,
  source: PRACTICE,
  check: (input) => unreasoned(input, ({ isBinding }) => !isBinding),
};
