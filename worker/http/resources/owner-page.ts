import type { Aftermath, KeptPack } from '../../archive/ledger/ledger-calls.ts';
import type { LoadingFacts } from '../../pack/loading-facts.ts';
import { onScreen } from '../../pack/on-screen.ts';
import { dateOf, printDate, printMoment } from '../../units/calendar.ts';
import { printerFor } from '../../units/print.ts';
import type { Lexicon } from '../../words/lexicon.ts';
import { wordsOf } from '../../words/words.ts';
import { reached } from '../answer.ts';
import { blobResponse } from '../blob-response.ts';
import { lexiconOfDocuments } from '../documents-lexicon.ts';
import { htmlPage } from '../html-page.ts';
import { openBefore } from '../open-before.ts';
import { missing, type OwnedLink, openedLink } from '../opened-link.ts';
import type { Call, Operation } from '../route.ts';
import { sealedDocuments } from '../sealed-documents.ts';
import { factsOf } from '../sealed-facts.ts';
import { sealedRecord } from '../sealed-record.ts';
import { workshopName } from '../workshop-seal.ts';
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
    const documents = await sealedDocuments(call, opened);
    const lexicon = lexiconOfDocuments(documents);
    const leading = documents.find(({ id }) => id === LEADING[opened.link.audience]) ?? documents[0];
    const { summary } = opened.pack;
    const standing = standingOf(opened, lexicon);
    // What no longer holds is not to be worked with: it is read as a document of the pack, and never first.
    const live = standing.isCurrent ? await liveFacts(call, opened, lexicon) : undefined;
    const place = { base: '#', documents, pictures: `${call.url.pathname}/documents/` };
    const words = wordsOf(lexicon);
    const openedAt = call.world.now().toISOString();
    const view = {
      title: words`${summary.registration} release pack ${summary.number}`,
      registration: summary.registration,
      ...standing,
      releasedBy: summary.releasedBy,
      issuedAt: printMoment(summary.issuedAt, lexicon.figures),
      until: live?.until ?? '',
      past: live?.past ?? [],
      isPast: (live?.past ?? []).length > 0,
      pack: summary.pack,
      ...(await sealedByOf(call, opened)),
      leadingHtml: standing.isCurrent ? onScreen(leading?.html ?? '', place) : '',
      pdfHref: `${call.url.pathname}/pack.pdf`,
      documentsTitle: standing.isCurrent
        ? words`Everything in the pack`
        : words`What stood in the pack, and no longer holds`,
      documents: documents
        .filter((document) => !standing.isCurrent || document !== leading)
        .map(({ id, title, html }) => ({ href: `${place.pictures}${id}`, title, html: onScreen(html, place) })),
      expiresOn: printDate(dateOf(opened.link.expiresAt), lexicon.figures),
      pdfSha256: opened.pack.pdfSha256,
      hasLoading: live?.loading !== undefined,
      loadingJson: live?.loading === undefined ? '' : inScript(live.loading),
      openedAt,
      openedOn: printMoment(openedAt, lexicon.figures),
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
    return blobResponse(call, opened, opened.pack.pdfSha256, options);
  },
};

export const openLinkDocument: Operation = {
  id: 'openLinkDocument',
  summary: 'One document of the pack that the link leads to',
  answers: { 200: PAGE('The document'), 404: MISSING },
  async handle(call) {
    const opened = await openedLink(call, 'document');
    const documents = opened ? await sealedDocuments(call, opened) : [];
    const document = documents.find(({ id }) => id === call.params.document);
    if (!opened || !document) return missing(call);
    const lexicon = lexiconOfDocuments(documents);
    const { isCurrent, headline } = standingOf(opened, lexicon);
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
async function liveFacts(call: Call, { name, pack }: OwnedLink, lexicon: Lexicon): Promise<LiveFacts> {
  const { pipeline } = call;
  const { issuedAt, number } = pack.summary;
  const packs = reached(await call.world.archive.ledger(name, (ledger) => ledger.newestIssues()));
  const before = packs.filter(({ summary }) => summary.number < number);
  const open = await openBefore(call, name, before);
  const assessed = await sealedRecord(call, { name, pack }, issuedAt, { open });
  if (!assessed) return { loading: undefined, until: '', past: [] };
  const { visit, results } = assessed;
  const say = printerFor(visit.units, lexicon);
  const due = pipeline.nextDue({ visit, results, say }, issuedAt);
  const today = dateOf(call.world.now().toISOString());
  return {
    loading: pipeline.loadingFacts(visit, results),
    until: due[0]?.limit ?? say.words`no limit in the record`,
    past: due.filter(({ date }) => date !== undefined && date < today).map(({ what, limit }) => ({ what, limit })),
  };
}

interface LiveFacts {
  /** Undefined where there is nothing to load. */
  loading: LoadingFacts | undefined;
  until: string;
  /** What was due by a date that has passed since. */
  past: { what: string; limit: string }[];
}

/** The workshop that sealed a pack, by the name under which the deployment knows it, and its key where that was kept. */
async function sealedByOf(call: Call, owned: OwnedLink): Promise<{ sealedBy: string; sealKey: string }> {
  const { workshop } = owned.name;
  const { sealedBy } = (await factsOf(call, owned)) ?? {};
  const name = sealedBy?.name ?? (await workshopName(call, workshop));
  return { sealedBy: `${name} (${workshop})`, sealKey: sealedBy?.kid ?? '' };
}

/** JSON as it may stand in a page: nothing in it can end the element that holds it. */
const inScript = (value: object): string => JSON.stringify(value).replaceAll('<', '\\u003c');

/** The first thing that a reader must know: whether what follows still holds. */
function standingOf({ pack, later, corrected }: { pack: KeptPack } & Aftermath, lexicon: Lexicon) {
  const words = wordsOf(lexicon);
  const { withdrawal } = pack;
  if (withdrawal) {
    const detail = words`${withdrawal.by} withdrew this release on ${printMoment(withdrawal.at, lexicon.figures)}: ${withdrawal.reason}. Do not fly on it: ask the workshop.`;
    return { isCurrent: false, headline: words`Withdrawn`, detail };
  }
  if (later?.withdrawal) {
    const when = printDate(dateOf(later.withdrawal.at), lexicon.figures);
    const detail = words`The later release ${later.summary.pack} was withdrawn on ${when}, and no release stands. Do not fly on this one, and do not load the aircraft by its figures: ask the workshop.`;
    return { isCurrent: false, headline: words`No release stands`, detail };
  }
  if (later) {
    const { issuedAt } = later.summary;
    const when = printDate(dateOf(issuedAt), lexicon.figures);
    const detail = words`A later release of ${when} replaces this one. Do not load the aircraft by the figures below: ask the workshop for the link to ${later.summary.pack}.`;
    return { isCurrent: false, headline: words`Superseded`, detail };
  }
  const [changed] = corrected;
  if (changed) {
    const detail = changed.withdrawal
      ? words`${changed.summary.pack}, an earlier release that this one was worked out from, was withdrawn since: ${changed.withdrawal.reason}. Do not load the aircraft by the figures of this pack: ask the workshop.`
      : words`An earlier release that this one was worked out from was corrected since, by ${changed.summary.pack}. Do not load the aircraft by the figures of this pack: ask the workshop.`;
    return { isCurrent: false, headline: words`Worked out from figures that were corrected`, detail };
  }
  const { supersedes } = pack.summary;
  const detail = supersedes
    ? words`This is the newest issue. It replaces ${supersedes}, whose figures no longer hold.`
    : words`This is the newest release of the aircraft that the workshop has issued.`;
  return { isCurrent: true, headline: words`Released`, detail };
}
