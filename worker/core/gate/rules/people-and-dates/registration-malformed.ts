import { REGISTRATION } from '../../../patterns.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const registrationMalformed: Rule = {
  code: 'REGISTRATION_MALFORMED',
  severity: 'blocks',
  meaning: 'The registration is not in the usual form',
  remedy: m.registrationMalformed_remedy,
  source: PRACTICE,
  check: ({ visit }) => {
    const { registration } = visit.aircraft;
    if (REGISTRATION.test(registration)) return undefined;
    return {
      path: ['aircraft', 'registration'],
      sentence: said(m.registrationMalformed_registrationNotWrittenMarks, { registration }),
      data: { registration },
    };
  },
};
