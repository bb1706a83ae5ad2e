import type { KeptVisit, VisitState } from '../../archive/ledger/ledger-calls.ts';
import { json, orNotFound, orUnavailable } from '../answer.ts';
import { entityTag, isKnown } from '../conditions.ts';
import { ledgerOf, nextLink, PAGE_QUERY, pageRequestOf, visitOf } from '../params.ts';
import type { Call, Operation } from '../route.ts';
import * as schemas from '../schemas.ts';

export const listVisits: Operation = {
  id: 'listVisits',
  summary: 'The visits of an aircraft',
  query: PAGE_QUERY,
  answers: {
    200: {
      description: 'States, by name',
      content: { 'application/json': schemas.listOf(schemas.VisitState) },
      headers: ['Link'],
    },
  },
  async handle(call) {
    const page = pageRequestOf(call);
    const { items, next } = orUnavailable(
      await call.world.archive.ledger(ledgerOf(call), (ledger) => ledger.visits(page)),
    );
    return json({ items }, 200, nextLink(call, next));
  },
};

export const getVisit: Operation = {
  id: 'getVisit',
  summary: 'The working record as kept',
  description:
    'As it was posted: an older record stays in its schemaVersion. The ETag is the recordSha256: name it in If-Match to replace or amend the record.',
  answers: {
    200: { description: 'The record', content: { 'application/json': 'VisitRecord' }, headers: ['ETag'] },
    304: { description: 'You have it already' },
  },
  async handle(call) {
    const kept = await keptVisit(call);
    const headers = visitHeaders(kept);
    if (isKnown(call.request, kept.recordSha256)) return new Response(null, { status: 304, headers });
    return new Response(kept.record, { headers: { 'Content-Type': 'application/json', ...headers } });
  },
};

/**
 * Returns the kept visit in the path.
 *
 * @throws HttpProblem 404 for an unknown visit
 */
export async function keptVisit(call: Call): Promise<KeptVisit> {
  const visit = visitOf(call);
  const answer = orUnavailable(await call.world.archive.ledger(ledgerOf(call), (ledger) => ledger.visit(visit)));
  return orNotFound(answer, 'such visit of this aircraft');
}

/** Returns the headers of a visit: its tag and when it was kept. */
export function visitHeaders({ recordSha256, updatedAt }: VisitState): Record<string, string> {
  return {
    ETag: entityTag(recordSha256),
    'Last-Modified': new Date(updatedAt).toUTCString(),
    'Cache-Control': 'private, no-cache',
  };
}
