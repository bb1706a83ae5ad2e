import type { KeptPack, OpenedLink } from '../../archive/ledger/ledger-calls.ts';
import type { LoadingFacts } from '../../pack/loading-facts.ts';
import { onScreen } from '../../pack/on-screen.ts';
import type { PackDocument } from '../../pipeline.ts';
import { dateOf, printDate, printMoment } from '../../units/calendar.ts';
import { found, reached } from '../answer.ts';
import { blobResponse } from '../blob-response.ts';
import { htmlPage } from '../html-page.ts';
import { missing, openedLink } from '../opened-link.ts';
import type { Call, Operation } from '../route.ts';
import { sealedRecord } from '../sealed-record.ts';
import { fileNameOf } from './packs.ts';

/** The document that each reader is shown first. */
const LEADING = { owner: 'owner-summary', inspector: 'release-statement' } as const;

const PAGE = (description: string) => ({ description, content: { 'text/html': 'text' as const } });
const MISSING = PAGE('The link is unknown, has expired or was revoked: all look alike');

export const openLink: Operation = {
  id: 'openLink',
  summary: "The owner's page",
  answers: { 200: PAGE('What stands for the aircraft'), 404: MISSING },
  async handle(call) {
    const opened = await openedLink(call, 'page');
    if (!opened) return missing();
    const documents = await documentsOf(call, opened.pack);
    const leading = documents.find(({ id }) => id === LEADING[opened.link.audience]) ?? documents[0];
    const { summary } = opened.pack;
    const standing = standingOf(opened);
    // Limits that no longer hold are not to be worked with.
    const live = standing.isCurrent ? await liveFacts(call, opened.pack) : undefined;
    const place = { base: '#', documents, pictures: `${call.url.pathname}/documents/` };
    const view = {
      title: `${summary.registration} release pack ${summary.number}`,
      registration: summary.registration,
      ...standing,
      releasedBy: summary.releasedBy,
      issuedAt: printMoment(summary.issuedAt),
      until: live?.until ?? '',
      pack: summary.pack,
      leadingHtml: onScreen(leading?.html ?? '', place),
      pdfHref: `${call.url.pathname}/pack.pdf`,
      documents: documents
        .filter((document) => document !== leading)
        .map(({ id, title, html }) => ({ href: `${place.pictures}${id}`, title, html: onScreen(html, place) })),
      expiresOn: printDate(dateOf(opened.link.expiresAt)),
      pdfSha256: opened.pack.pdfSha256,
      hasLoading: live?.loading !== undefined,
      loadingJson: live?.loading === undefined ? '' : inScript(live.loading),
      openedAt: call.world.now().toISOString(),
    };
    return htmlPage('owner-page', view, 200, true);
  },
};

export const openLinkPdf: Operation = {
  id: 'openLinkPdf',
  summary: 'The PDF that the link leads to',
  answers: {
    200: { description: 'The PDF', content: { 'application/pdf': 'binary' }, headers: ['ETag'] },
    206: { description: 'The part asked for', content: { 'application/pdf': 'binary' } },
    304: { description: 'You have it already' },
    404: MISSING,
  },
  problems: ['range-not-satisfiable'],
  async handle(call) {
    const opened = await openedLink(call, 'pdf');
    if (!opened) return missing();
    const fileName = fileNameOf(opened.pack.summary.pack);
    const options = { type: 'application/pdf', fileName, cacheControl: 'private, no-store' };
    return blobResponse(call, opened.pack.pdfSha256, options);
  },
};

export const openLinkDocument: Operation = {
  id: 'openLinkDocument',
  summary: 'One document of the pack that the link leads to',
  answers: { 200: PAGE('The document'), 404: MISSING },
  async handle(call) {
    const opened = await openedLink(call, 'document');
    const documents = opened ? await documentsOf(call, opened.pack) : [];
    const document = documents.find(({ id }) => id === call.params.document);
    if (!opened || !document) return missing();
    const { isCurrent, headline } = standingOf(opened);
    const base = `/p/${call.params.token}/documents/`;
    return htmlPage('document-page', {
      title: `${document.title}, ${opened.pack.summary.pack}`,
      banner: `${opened.pack.summary.pack}: ${headline}`,
      bannerKind: isCurrent ? 'released' : 'superseded',
      back: `/p/${call.params.token}`,
      html: onScreen(document.html, { base, documents, pictures: base }),
    });
  },
};

/** What holds as long as the pack is current, by the record that was sealed: what loadings follow from, and what is due first. */
async function liveFacts(call: Call, pack: KeptPack): Promise<LiveFacts> {
  const { pipeline } = call;
  const { issuedAt } = pack.summary;
  const assessed = await sealedRecord(call, pack, issuedAt);
  if (!assessed) return { loading: undefined, until: '' };
  const [first] = pipeline.nextDue(assessed, issuedAt);
  return {
    loading: pipeline.loadingFacts(assessed.visit, assessed.results),
    until: first?.limit ?? 'no limit in the record',
  };
}

interface LiveFacts {
  /** Undefined where there is nothing to load. */
  loading: LoadingFacts | undefined;
  until: string;
}

/** JSON as it may stand in a page: nothing in it can end the element that holds it. */
const inScript = (value: object): string => JSON.stringify(value).replaceAll('<', '\\u003c');

async function documentsOf({ world }: Call, { documentsSha256 }: KeptPack): Promise<PackDocument[]> {
  const body = found(reached(await world.archive.blob(documentsSha256)), 'such documents');
  return new Response(body).json<PackDocument[]>();
}

/** The first thing that a reader must know: whether what follows still holds. */
function standingOf({ pack, later }: OpenedLink) {
  const { withdrawal } = pack;
  if (withdrawal) {
    const detail = `${withdrawal.by} withdrew this release on ${printMoment(withdrawal.at)}: ${withdrawal.reason}. Do not fly on it: ask the workshop.`;
    return { isCurrent: false, headline: 'Withdrawn', detail };
  }
  if (later) {
    const { issuedAt } = later.summary;
    const when = printDate(dateOf(issuedAt));
    const detail = `A later release of ${when} replaces this one. Do not load the aircraft by the figures below: ask the workshop for the link to ${later.summary.pack}.`;
    return { isCurrent: false, headline: 'Superseded', detail };
  }
  const { supersedes } = pack.summary;
  const detail = supersedes
    ? `This is the newest issue. It replaces ${supersedes}, whose figures no longer hold.`
    : 'This is the newest release of the aircraft that the workshop has issued.';
  return { isCurrent: true, headline: 'Released', detail };
}
