import { Baseline } from '../../../core/record/baseline.ts';
import { dateOf } from '../../../core/units/calendar.ts';
import { json } from '../answer.ts';
import { missing, openedLink } from '../opened-link.ts';
import type { OwnedPack } from '../owned-pack.ts';
import { HttpProblem } from '../problem.ts';
import type { Call, Operation } from '../route.ts';
import { sealedRecord } from '../sealed-record.ts';
import { ownedPack } from './packs.ts';

const ANSWER = {
  description: 'The `baseline` of the next record, in the units of this one',
  content: { 'application/json': Baseline },
};

export const getBaseline: Operation = {
  id: 'getBaseline',
  summary: 'Carry forward: the baseline of the next visit, from this pack',
  answers: { 200: ANSWER },
  async handle(call) {
    return json(await baselineOf(call, await ownedPack(call)));
  },
};

export const openLinkBaseline: Operation = {
  id: 'openLinkBaseline',
  summary: 'Carry forward from a link: for the workshop that the aircraft moves to',
  description: 'The owner passes the link on; it gives access to nothing else of the workshop that sealed the pack.',
  answers: {
    200: ANSWER,
    404: { description: 'The link is unknown, has expired or was revoked', content: { 'text/html': 'text' } },
  },
  async handle(call) {
    const opened = await openedLink(call, 'document');
    return opened ? json(await baselineOf(call, opened)) : missing(call);
  },
};

/**
 * Returns the baseline of a pack for the next visit.
 *
 * @throws HttpProblem 404 if the visit has no empty mass
 */
async function baselineOf(call: Call, owned: OwnedPack): Promise<object> {
  const { pack, issuedAt } = owned.pack.summary;
  const assessed = await sealedRecord(call, owned, issuedAt);
  const baseline =
    assessed && call.pipeline.carriedForward(assessed.visit, assessed.results, { pack, date: dateOf(issuedAt) });
  if (!baseline) throw new HttpProblem('not-found', 'The pack has no empty mass that could be carried forward');
  return baseline;
}
