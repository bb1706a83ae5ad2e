import * as z from 'zod';
import { LIMITS } from '../../core/limits.ts';
import { IDENTIFIER, PACK_NAME, REGISTRATION } from '../../core/patterns.ts';
import type { LedgerName } from '../archive/archive.ts';
import type { PageRequest } from '../archive/page.ts';
import { HttpProblem } from './problem.ts';
import type { Call } from './route.ts';

/** Returns the registration in the path, in capitals. */
export function registrationOf({ params }: Call): string {
  const registration = params.registration?.toUpperCase() ?? '';
  if (REGISTRATION.test(registration)) return registration;
  throw new HttpProblem('malformed-request', 'A registration has letters, digits and up to one hyphen, as Q-SLM');
}

export function visitOf({ params }: Call): string {
  if (IDENTIFIER.test(params.visit ?? '')) return params.visit ?? '';
  throw new HttpProblem('malformed-request', 'A visit is named by letters, digits, dot, hyphen or underscore, max. 40');
}

/** Returns the ledger of the aircraft in the path, in the caller's workshop. */
export function ledgerOf(call: Call): LedgerName {
  return { workshop: call.caller.workshop, registration: registrationOf(call) };
}

/** Returns the pack in the path and its ledger, which follows from the name of the pack. */
export function packOf({ params, caller }: Call): { pack: string; ledger: LedgerName } {
  const pack = params.pack?.toUpperCase() ?? '';
  const registration = PACK_NAME.exec(pack)?.[1];
  if (!registration) throw new HttpProblem('not-found', 'There is no such pack');
  return { pack, ledger: { workshop: caller.workshop, registration } };
}

export const PAGE_QUERY = {
  limit: `Items on a page, 1 to ${LIMITS.pageSize}`,
  after: 'Cursor of the page, from the Link header',
} as const;

const Query = z.strictObject({
  limit: z.coerce.number().int().min(1).max(LIMITS.pageSize).default(LIMITS.pageSize),
  after: z.string().min(1).max(200).optional(),
});

export function pageRequestOf({ url }: Call): PageRequest {
  const parsed = Query.safeParse(Object.fromEntries(url.searchParams));
  if (!parsed.success)
    throw new HttpProblem('malformed-request', `limit must be 1 to ${LIMITS.pageSize}, after a cursor`);
  const { limit, after } = parsed.data;
  return after === undefined ? { limit } : { limit, after };
}

/** Returns the `Link` header to the next page (RFC 8288), if there is one. */
export function nextLink({ url }: Call, next: string | null): Record<string, string> {
  if (next === null) return {};
  const query = new URLSearchParams(url.searchParams);
  query.set('after', next);
  return { Link: `<${url.pathname}?${query}>; rel="next"` };
}
