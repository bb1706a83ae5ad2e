import { sha256 } from '../../core/pack/digest.ts';
import type { LedgerName } from '../archive/archive.ts';
import type { Opened, OpenedLink } from '../archive/ledger/ledger-calls.ts';
import { causeOf, orUnavailable } from './answer.ts';
import { htmlPage } from './html-page.ts';
import { localeOfReader } from './locale-of-reader.ts';
import type { Call } from './route.ts';

const NOBODYS = { workshop: '', registration: '' };

const TOKEN = /^[A-Za-z0-9_-]{43}$/;

/** Link that opens, with its workshop. */
export interface OwnedLink extends OpenedLink {
  name: LedgerName;
}

/**
 * Returns the link of the token; undefined for a token that is wrong, expired or revoked. The opening is recorded
 * afterwards, if possible: a reader with a valid link can read even if nothing can be written.
 */
export async function openedLink(call: Call, what: Opened): Promise<OwnedLink | undefined> {
  const { params, world } = call;
  const { token = '' } = params;
  if (!TOKEN.test(token)) return undefined;
  const tokenSha256 = await sha256(token);
  // An unknown token takes the same path as an expired one: the time taken reveals nothing.
  const name = orUnavailable(await world.archive.ledgerOfLink(tokenSha256)) ?? NOBODYS;
  const at = world.now().toISOString();
  const opened = orUnavailable(await world.archive.ledger(name, (ledger) => ledger.openLink(tokenSha256, at)));
  if (!opened) return undefined;
  const { link } = opened.link;
  call.later(async () => {
    const noted = await world.archive.ledger(name, (ledger) => ledger.noteOpening(link, { at, what }));
    if (!noted.ok) world.log({ code: 'NOT_NOTED', what: 'opening', cause: causeOf(noted) });
  });
  return { ...opened, name };
}

/** Returns the response for an invalid link: the same for all of them. */
export function missing({ request }: Call): Response {
  return htmlPage('missing-page', {}, { status: 404, locale: localeOfReader(request) });
}
