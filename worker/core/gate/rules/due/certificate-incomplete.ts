import type { CertificateKind } from '../../../record/certificates.ts';
import * as m from '../../../text/generated/messages.ts';
import { list, said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

/** Documents that always have a last day. */
const LIMITED: ReadonlySet<CertificateKind> = new Set(['permit-to-fly', 'airworthiness-review', 'insurance']);

export const certificateIncomplete: Rule = {
  code: 'CERTIFICATE_INCOMPLETE',
  severity: 'caution',
  meaning: 'A document of the aircraft has no number, or no last day though its kind has one',
  remedy: m.certificateIncomplete_remedy,
  source: PRACTICE,
  check: ({ visit }) =>
    hitsIn(['certificates'], visit.certificates, ({ id, kind, title, number, validUntil }) => {
      const missing = [
        ...(number === undefined ? [m.certificateIncomplete_number] : []),
        ...(validUntil === undefined && LIMITED.has(kind) ? [m.certificateIncomplete_lastDay] : []),
      ];
      if (missing.length === 0) return undefined;
      return {
        sentence: said(m.certificateIncomplete_missing, {
          name: title ?? termOf(kind),
          missing: list(missing.map((each) => said(each))),
        }),
        data: { certificate: id },
      };
    }),
};
