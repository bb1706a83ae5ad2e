import type { KeptPack, OpenedLink } from '../../archive/ledger/ledger-calls.ts';
import type { LoadingFacts } from '../../pack/loading-facts.ts';
import { onScreen } from '../../pack/on-screen.ts';
import type { Assessed, PackDocument } from '../../pipeline.ts';
import { dateOf } from '../../units/calendar.ts';
import { type Printer, printerFor } from '../../units/print.ts';
import type { Units } from '../../units/quantity.ts';
import { recordPrinter } from '../../visit/record-printer.ts';
import type { Lexicon } from '../../words/lexicon.ts';
import { found, reached } from '../answer.ts';
import { blobResponse } from '../blob-response.ts';
import { lexiconOfDocuments } from '../documents-lexicon.ts';
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
    if (!opened) return missing(call);
    const documents = await documentsOf(call, opened.pack);
    const lexicon = lexiconOfDocuments(documents);
    const leading = documents.find(({ id }) => id === LEADING[opened.link.audience]) ?? documents[0];
    const { summary } = opened.pack;
    const assessed = await sealedRecord(call, opened.pack, summary.issuedAt);
    const say = printerOf(assessed, lexicon);
    const standing = standingOf(opened, say);
    // What no longer holds is not to be worked with: it is read as a document of the pack, and never first.
    const live = standing.isCurrent ? liveFacts(call, opened.pack, assessed, say) : undefined;
    const place = { base: '#', documents, pictures: `${call.url.pathname}/documents/` };
    const { words } = say;
    const openedAt = say.local(call.world.now().toISOString());
    const view = {
      title: words`${summary.registration} release pack ${summary.number}`,
      registration: summary.registration,
      ...standing,
      releasedBy: summary.releasedBy,
      issuedAt: say.moment(summary.issuedAt),
      until: live?.until ?? '',
      past: live?.past ?? [],
      isPast: (live?.past ?? []).length > 0,
      pack: summary.pack,
      leadingHtml: standing.isCurrent ? onScreen(leading?.html ?? '', place) : '',
      pdfHref: `${call.url.pathname}/pack.pdf`,
      documentsTitle: standing.isCurrent
        ? words`Everything in the pack`
        : words`What stood in the pack, and no longer holds`,
      documents: documents
        .filter((document) => !standing.isCurrent || document !== leading)
        .map(({ id, title, html }) => ({ href: `${place.pictures}${id}`, title, html: onScreen(html, place) })),
      expiresOn: say.day(opened.link.expiresAt),
      pdfSha256: opened.pack.pdfSha256,
      hasLoading: live?.loading !== undefined,
      loadingJson: live?.loading === undefined ? '' : inScript(live.loading),
      openedAt,
      openedOn: say.moment(openedAt),
    };
    return htmlPage('owner-page', view, { hasScript: true, lexicon });
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
    if (!opened) return missing(call);
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
    if (!opened || !document) return missing(call);
    const lexicon = lexiconOfDocuments(documents);
    const { isCurrent, headline } = standingOf(opened, printerOf(undefined, lexicon));
    const base = `/p/${call.params.token}/documents/`;
    const view = {
      title: `${document.title}, ${opened.pack.summary.pack}`,
      banner: `${opened.pack.summary.pack}: ${headline}`,
      bannerKind: isCurrent ? 'released' : 'superseded',
      back: `/p/${call.params.token}`,
      html: onScreen(document.html, { base, documents, pictures: base }),
    };
    return htmlPage('document-page', view, { lexicon });
  },
};

/** What holds as long as the pack is current, by the record that was sealed: what loadings follow from, and what is due first. */
function liveFacts(
  { pipeline, world }: Call,
  { summary }: KeptPack,
  assessed: Assessed | undefined,
  say: Printer,
): LiveFacts {
  if (!assessed) return { loading: undefined, until: '', past: [] };
  const { visit, results } = assessed;
  const due = pipeline.nextDue({ visit, results, say }, summary.issuedAt);
  const today = dateOf(say.local(world.now().toISOString()));
  return {
    loading: pipeline.loadingFacts(visit, results),
    until: due[0]?.limit ?? say.words`no limit in the record`,
    past: due.filter(({ date }) => date !== undefined && date < today).map(({ what, limit }) => ({ what, limit })),
  };
}

/** Says everything in the zone of the workshop, as the pack does; each moment in its own where the record is no longer read. */
function printerOf(assessed: Assessed | undefined, lexicon: Lexicon): Printer {
  return assessed ? recordPrinter(assessed.visit, lexicon) : printerFor(METRIC, lexicon);
}

const METRIC: Units = { mass: 'kg', arm: 'mm', volume: 'l' };

interface LiveFacts {
  /** Undefined where there is nothing to load. */
  loading: LoadingFacts | undefined;
  until: string;
  /** What was due by a date that has passed since. */
  past: { what: string; limit: string }[];
}

/** JSON as it may stand in a page: nothing in it can end the element that holds it. */
const inScript = (value: object): string => JSON.stringify(value).replaceAll('<', '\\u003c');

async function documentsOf({ world }: Call, { documentsSha256 }: KeptPack): Promise<PackDocument[]> {
  const body = found(reached(await world.archive.blob(documentsSha256)), 'such documents');
  return new Response(body).json<PackDocument[]>();
}

/** The first thing that a reader must know: whether what follows still holds. */
function standingOf({ pack, later }: OpenedLink, say: Printer) {
  const { words } = say;
  const { withdrawal } = pack;
  if (withdrawal) {
    const detail = words`${withdrawal.by} withdrew this release on ${say.moment(withdrawal.at)}: ${withdrawal.reason}. Do not fly on it: ask the workshop.`;
    return { isCurrent: false, headline: words`Withdrawn`, detail };
  }
  if (later) {
    const { issuedAt } = later.summary;
    const when = say.day(issuedAt);
    const detail = words`A later release of ${when} replaces this one. Do not load the aircraft by the figures below: ask the workshop for the link to ${later.summary.pack}.`;
    return { isCurrent: false, headline: words`Superseded`, detail };
  }
  const { supersedes } = pack.summary;
  const detail = supersedes
    ? words`This is the newest issue. It replaces ${supersedes}, whose figures no longer hold.`
    : words`This is the newest release of the aircraft that the workshop has issued.`;
  return { isCurrent: true, headline: words`Released`, detail };
}
