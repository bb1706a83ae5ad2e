import type { Assessed } from '../../../core/core.ts';
import { onScreen } from '../../../core/pack/on-screen.ts';
import { needsCare, ownerPage } from '../../../core/pack/views/owner-page.ts';
import { recordFormatter } from '../../../core/record/record-formatter.ts';
import { type Formatter, formatterFor, METRIC } from '../../../core/text/formatter.ts';
import * as m from '../../../core/text/generated/messages.ts';
import type { Locale } from '../../../core/text/locale.ts';
import { blobResponse } from '../blob-response.ts';
import { localeOfDocuments } from '../documents-locale.ts';
import { htmlPage } from '../html-page.ts';
import { assessedAsThen, liveFacts } from '../live-facts.ts';
import { missing, type OwnedLink, openedLink } from '../opened-link.ts';
import { standingOf } from '../owner-standing.ts';
import type { Call, Operation } from '../route.ts';
import { sealedDocuments } from '../sealed-documents.ts';
import { factsOf, type UsableFacts } from '../sealed-facts.ts';
import { type Letterhead, letterheadOf, nameOf, reachedAt } from '../sealed-letterhead.ts';
import { workshopName } from '../workshop-seal.ts';
import { fileNameOf } from './packs.ts';

// The page contains the documents: an owner without a network has everything after one opening. Only the opening is
// logged, not the reading of a document.

/** First document for each audience. */
const LEADING = { owner: 'owner-summary', inspector: 'release-statement' } as const;

const PAGE = (description: string) => ({ description, content: { 'text/html': 'text' as const } });
const MISSING = PAGE('The link is unknown, expired or revoked; the response does not show which');

export const openLink: Operation = {
  id: 'openLink',
  summary: "The owner's page",
  answers: { 200: PAGE('Current state of the aircraft'), 404: MISSING },
  async handle(call) {
    const opened = await openedLink(call, 'page');
    if (!opened) return missing(call);
    const documents = await sealedDocuments(call, opened);
    const locale = localeOfDocuments(documents);
    const assessed = await assessedAsThen(call, opened);
    const fmt = formatterOf(assessed, locale);
    const openedAt = fmt.local(call.world.now().toISOString());
    const { withdrawal, summary, pdfSha256 } = opened.pack;
    const letterhead = assessed?.record ?? (await letterheadOf(call, opened));
    const withdrawnBy = withdrawal ? (nameOf(letterhead, withdrawal.by) ?? withdrawal.by) : '';
    const standing = standingOf(opened, fmt, { withdrawnBy, readOn: fmt.timestamp(openedAt) });
    const facts = await factsOf(call, opened);
    // Outdated facts are not shown live: they are read as a document of the pack, and never first.
    const live = standing.isCurrent && assessed ? liveFacts(call, opened, { assessed, facts, fmt }) : undefined;
    const isToBeAsked = !standing.isCurrent || needsCare(live);
    const view = ownerPage(
      {
        summary,
        standing,
        live,
        documents,
        leading: LEADING[opened.link.audience],
        path: call.url.pathname,
        askWhom: isToBeAsked ? await askWhom(call, opened, letterhead, fmt) : undefined,
        ...(await sealedByOf(call, opened, facts)),
        pdfSha256,
        expiresAt: opened.link.expiresAt,
        openedAt,
      },
      fmt,
    );
    return htmlPage('owner-page', view, { hasScript: true, locale });
  },
};

export const openLinkPdf: Operation = {
  id: 'openLinkPdf',
  summary: 'The PDF behind the link',
  answers: {
    200: { description: 'The PDF', content: { 'application/pdf': 'binary' }, headers: ['ETag'] },
    206: { description: 'The requested part', content: { 'application/pdf': 'binary' } },
    304: { description: 'You have it already' },
    404: MISSING,
  },
  problems: ['range-not-satisfiable'],
  async handle(call) {
    const opened = await openedLink(call, 'pdf');
    if (!opened) return missing(call);
    const fileName = fileNameOf(opened.pack.summary.pack);
    const options = { type: 'application/pdf', fileName, cacheControl: 'private, no-store' };
    return blobResponse(call, opened, opened.pack.pdfSha256, options);
  },
};

export const openLinkDocument: Operation = {
  id: 'openLinkDocument',
  summary: 'One document of the pack behind the link',
  answers: { 200: PAGE('The document'), 404: MISSING },
  async handle(call) {
    const opened = await openedLink(call, 'document');
    const documents = opened ? await sealedDocuments(call, opened) : [];
    const document = documents.find(({ id }) => id === call.params.document);
    if (!opened || !document) return missing(call);
    const locale = localeOfDocuments(documents);
    const { isCurrent, headline } = standingOf(opened, formatterOf(undefined, locale));
    const base = `/p/${call.params.token}/documents/`;
    const view = {
      title: `${document.title}, ${opened.pack.summary.pack}`,
      banner: `${opened.pack.summary.pack}: ${headline}`,
      bannerKind: isCurrent ? 'released' : 'superseded',
      back: `/p/${call.params.token}`,
      html: onScreen(document.html, { base, documents, pictures: base }),
    };
    return htmlPage('document-page', view, { locale });
  },
};

/**
 * Returns the formatter for the zone of the workshop, as in the pack; for timestamps with their own offset if the
 * record cannot be read.
 */
function formatterOf(assessed: Assessed | undefined, locale: Locale): Formatter {
  return assessed ? recordFormatter(assessed.visit, locale) : formatterFor(METRIC, locale);
}

/** Returns the workshop that a reader may contact, with its contact details. */
async function askWhom(call: Call, owned: OwnedLink, letterhead: Letterhead, { text }: Formatter): Promise<string> {
  const { name = await workshopName(call, owned.name.workshop), at } = reachedAt(letterhead);
  return text(m.ownerPage_asked, { value: [name, ...at].join(', ') });
}

/** Returns the workshop that sealed a pack, by its name in the deployment, and its key if that was kept. */
async function sealedByOf(
  call: Call,
  owned: OwnedLink,
  facts: UsableFacts | undefined,
): Promise<{ sealedBy: string; sealKey: string }> {
  const { workshop } = owned.name;
  const { sealedBy } = facts ?? {};
  const name = sealedBy?.name ?? (await workshopName(call, workshop));
  return { sealedBy: `${name} (${workshop})`, sealKey: sealedBy?.kid ?? '' };
}
