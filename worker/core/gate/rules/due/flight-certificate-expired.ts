import * as m from '../../../text/generated/messages.ts';
import { expiredCertificates } from '../../expired-certificates.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const flightCertificateExpired: Rule = {
  code: 'FLIGHT_CERTIFICATE_EXPIRED',
  severity: 'caution',
  meaning: 'Permit, certificate, airworthiness review or registration of the aircraft has expired',
  remedy: m.flightCertificateExpired_remedy,
  source: PRACTICE,
  check: (input) => expiredCertificates(input, true),
};
