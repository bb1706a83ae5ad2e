import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { type Rule, read } from '../../rule.ts';

export const temporaryLeft: Rule = {
  code: 'TEMPORARY_LEFT',
  severity: 'blocks',
  meaning: 'Something temporary was left on the aircraft',
  remedy: m.temporaryLeft_remedy,
  source: read('145.A.48 (clear of tools and equipment)'),
  check: ({ visit: { closing } }) =>
    closing?.nothingTemporary === false
      ? { path: ['closing', 'nothingTemporary'], sentence: said(m.temporaryLeft_notTakenOut) }
      : undefined,
};
