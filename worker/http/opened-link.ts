import type { Opened, OpenedLink } from '../archive/ledger/ledger-calls.ts';
import { sha256 } from '../pack/digest.ts';
import { languageOf } from '../words/language.ts';
import { lexiconFor } from '../words/lexicons.ts';
import { reached } from './answer.ts';
import { htmlPage } from './html-page.ts';
import type { Call } from './route.ts';

const NOBODYS = { workshop: '', registration: '' };

const TOKEN = /^[A-Za-z0-9_-]{43}$/;

/** The link behind the token, or undefined for a token that is wrong, expired or revoked. */
export async function openedLink({ params, world }: Call, what: Opened): Promise<OpenedLink | undefined> {
  const { token = '' } = params;
  if (!TOKEN.test(token)) return undefined;
  const tokenSha256 = await sha256(token);
  // A token that nobody has takes the same way as one that is over: the time taken tells nothing.
  const name = reached(await world.archive.ledgerOfLink(tokenSha256)) ?? NOBODYS;
  const at = world.now().toISOString();
  return reached(await world.archive.ledger(name, (ledger) => ledger.openLink(tokenSha256, at, what))) ?? undefined;
}

/** What a reader is told whose link leads nowhere: the same for all that do, in the first language of theirs that we have. */
export function missing({ request }: Call): Response {
  const asked = (request.headers.get('Accept-Language') ?? '').split(',').map((range) => range.trim().slice(0, 2));
  const language = languageOf(asked.find((wanted) => wanted === languageOf(wanted)));
  return htmlPage('missing-page', {}, { status: 404, lexicon: lexiconFor(language) });
}
