import type { CertificateKind } from '../record/certificates.ts';
import * as figure from '../text/figure.ts';
import * as m from '../text/generated/messages.ts';
import { said } from '../text/message.ts';
import { termOf } from '../text/terms.ts';
import { dateOf } from '../units/calendar.ts';
import { hitsIn } from './hits.ts';
import type { Hits, RuleInput } from './rule.ts';

/** Certificates without which an aircraft may not fly in most States; local rules come first. Common practice, no source. */
const FOR_FLIGHT: readonly CertificateKind[] = [
  'permit-to-fly',
  'airworthiness-certificate',
  'airworthiness-review',
  'registration',
];

/** Hits for certificates whose last day has passed: those that a flight needs, or the others. */
export function expiredCertificates({ visit, at }: RuleInput, areForFlight: boolean): Hits {
  return hitsIn(['certificates'], visit.certificates, ({ id, kind, title, validUntil }) => {
    if (FOR_FLIGHT.includes(kind) !== areForFlight) return undefined;
    if (validUntil === undefined || validUntil >= dateOf(at)) return undefined;
    return {
      field: 'validUntil',
      sentence: said(m.certificateExpired_expired, {
        certificate: title ?? termOf(kind),
        date: figure.date(validUntil),
      }),
      data: { certificate: id, validUntil },
    };
  });
}
