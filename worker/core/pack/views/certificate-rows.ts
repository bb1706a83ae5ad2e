import { DASH } from '../../text/dash.ts';
import * as m from '../../text/generated/messages.ts';
import { dateOf } from '../../units/calendar.ts';
import type { PackContext } from '../context.ts';
import type { View } from '../render.ts';

/** Returns the certificates of the aircraft with their last day. */
export function certificateRows({ visit, issuedAt, fmt }: PackContext): View {
  const { certificates = [] } = visit;
  const today = dateOf(fmt.local(issuedAt));
  return {
    hasCertificates: certificates.length > 0,
    certificates: certificates.map(({ kind, title, number, issuer, validUntil }) => ({
      title: title ?? fmt.term(kind),
      number: number ?? DASH,
      issuer: issuer ?? DASH,
      until: validUntil === undefined ? fmt.text(m.dueList_unlimited) : fmt.date(validUntil),
      state: validUntil !== undefined && validUntil < today ? fmt.text(m.dueList_expired) : '',
    })),
  };
}
