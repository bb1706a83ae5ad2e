import * as m from '../../../text/generated/messages.ts';
import { expiredCertificates } from '../../expired-certificates.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const certificateExpired: Rule = {
  code: 'CERTIFICATE_EXPIRED',
  severity: 'note',
  meaning: 'Another certificate of the aircraft, such as its insurance, has expired',
  remedy: m.certificateExpired_remedy,
  source: PRACTICE,
  check: (input) => expiredCertificates(input, false),
};
