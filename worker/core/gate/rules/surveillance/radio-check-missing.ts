import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const radioCheckMissing: Rule = {
  code: 'RADIO_CHECK_MISSING',
  severity: 'blocks',
  meaning: 'The record has radios but no two-way radio check',
  remedy: m.radioCheckMissing_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    visit.surveillance && !visit.surveillance.radioChecks?.length
      ? { path: ['surveillance', 'radioChecks'], sentence: said(m.radioCheckMissing_noTwoWayCheck) }
      : undefined,
};
