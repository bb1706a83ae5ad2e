import * as z from 'zod';
import { LIMITS } from '../../../core/limits.ts';
import { sha256 } from '../../../core/pack/digest.ts';
import { DAY_MS } from '../../../core/units/calendar.ts';
import { AUDIENCES } from '../../archive/ledger/ledger-calls.ts';
import { json, orNotFound, orUnavailable } from '../answer.ts';
import { keyReused, linkToken, requestKeyOf } from '../idempotency.ts';
import { actorOf } from '../in-whose-name.ts';
import { packOf } from '../params.ts';
import { requestBody } from '../request-body.ts';
import type { Operation } from '../route.ts';
import * as schemas from '../schemas.ts';
import { ownedPack } from './packs.ts';

const LinkRequest = z.strictObject({
  audience: z.enum(AUDIENCES).meta({ description: 'Reader for whom the link is made' }),
  days: z
    .int()
    .min(1)
    .max(LIMITS.linkDays)
    .default(LIMITS.linkDefaultDays)
    .meta({ description: 'Days for which the link works' }),
});

export const makeLink: Operation = {
  id: 'makeLink',
  summary: 'Make a link to read the pack without a key',
  description:
    'It follows the pack number and shows its newest issue. The address is shown only once; only its digest is kept.',
  headers: { 'Idempotency-Key': 'A request repeated under the same key by the same caller has the same link' },
  body: { type: 'application/json', description: 'Reader and duration', schema: LinkRequest },
  answers: { 201: { description: 'The link', content: { 'application/json': schemas.NewLink } } },
  problems: [
    'malformed-json',
    'body-too-large',
    'unsupported-media-type',
    'request-not-valid',
    'idempotency-key-reused',
  ],
  async handle(call) {
    const { audience, days } = await requestBody(call.request, LinkRequest);
    const { pack, ledger } = packOf(call);
    await ownedPack(call);
    const request = await requestKeyOf(call, { audience, days });
    const token = await linkToken(call);
    const tokenSha256 = await sha256(token);
    const now = call.world.now();
    const expiresAt = new Date(now.getTime() + days * DAY_MS).toISOString();
    // The pointer is written first: a pointer without a link in the ledger opens nothing, a link without a pointer
    // could not be opened.
    orUnavailable(await call.world.archive.pointLink(tokenSha256, ledger));
    const made = { tokenSha256, pack, audience, expiresAt, actor: actorOf(call), at: now.toISOString() };
    const add = { ...made, ...(request && { request }) };
    const outcome = orUnavailable(await call.world.archive.ledger(ledger, (calls) => calls.addLink(add)));
    if (outcome.kind === 'key-reused') throw keyReused();
    const { link } = orNotFound(outcome.kind === 'no-pack' ? null : outcome, 'such pack');
    if (outcome.kind === 'added') call.world.log({ code: 'LINK_MADE', link: link.link, pack, key: call.caller.key });
    return json({ ...link, url: `${call.url.origin}/p/${token}` }, 201, { 'Cache-Control': 'no-store' });
  },
};

export const listLinks: Operation = {
  id: 'listLinks',
  summary: 'The links that follow the pack, with when they were opened',
  answers: { 200: { description: 'Links', content: { 'application/json': schemas.listOf(schemas.UsedLink) } } },
  async handle(call) {
    const { pack, ledger } = packOf(call);
    const links = orUnavailable(await call.world.archive.ledger(ledger, (calls) => calls.links(pack)));
    return json({ items: orNotFound(links, 'such pack') });
  },
};

export const revokeLink: Operation = {
  id: 'revokeLink',
  summary: 'Revoke a link',
  answers: { 204: { description: 'Revoked' } },
  async handle(call) {
    const { pack, ledger } = packOf(call);
    const { link: name = '' } = call.params;
    const at = call.world.now().toISOString();
    const request = { pack, link: name, actor: actorOf(call), at };
    const link = orNotFound(
      orUnavailable(await call.world.archive.ledger(ledger, (calls) => calls.revokeLink(request))),
      'such link of this pack',
    );
    call.world.log({ code: 'LINK_REVOKED', link: link.link, pack, key: call.caller.key });
    return new Response(null, { status: 204 });
  },
};
