import * as m from '../../../text/generated/messages.ts';
import { unreasoned } from '../../restated-parts.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const standingValueChanged: Rule = {
  code: 'STANDING_VALUE_CHANGED',
  severity: 'blocks',
  meaning: 'A limit, mass, arm or term differs from the standing file, without a reason',
  remedy: m.standingValueChanged_remedy,
  source: PRACTICE,
  check: (input) => unreasoned(input, ({ isBinding }) => isBinding),
};
