import type { Formatter } from '../../text/formatter.ts';
import * as m from '../../text/generated/messages.ts';
import type { LoadingFacts } from '../loading-facts.ts';
import { onScreen } from '../on-screen.ts';
import type { PackDocument } from '../pack-documents.ts';
import type { View } from '../render.ts';
import type { PackSummary } from '../summary.ts';

/** Status of a pack, the first statement of its page. */
export interface Standing {
  isCurrent: boolean;
  headline: string;
  detail: string;
  /** The same in the words of a copy, which does not know the present status; empty if it is permanent. */
  detailThen: string;
}

/** Facts valid while a pack is current. */
export interface LiveFacts {
  /** Undefined if there is nothing to load. */
  loading: LoadingFacts | undefined;
  until: string;
  isOfWeighingAlone: boolean;
  /** Items past their limit at the release, or due by a date that has passed since. */
  past: { what: string; limit: string }[];
  /** Limits that today's rules make tighter than in the pack, each in a sentence. */
  tighter: string[];
}

/** Content of the page of a link. */
export interface OwnerPage {
  summary: PackSummary;
  standing: Standing;
  /** Undefined if the pack is no longer current, or its record no longer fits the schema. */
  live: LiveFacts | undefined;
  documents: readonly PackDocument[];
  /** Identifier of the first document for this reader. */
  leading: string;
  /** Address of the page. */
  path: string;
  /** The workshop to contact, in a sentence; undefined without a question. */
  askWhom: string | undefined;
  sealedBy: string;
  /** Fingerprint of the key that sealed the pack; empty if it was not kept. */
  sealKey: string;
  pdfSha256: string;
  expiresAt: string;
  /** Time of this opening, in the time zone of the page. */
  openedAt: string;
}

/** Whether a current pack has a limit that is past, or one that today's rules make tighter. */
export function needsCare(live: LiveFacts | undefined): boolean {
  return live !== undefined && live.past.length + live.tighter.length > 0;
}

/** Returns the page of a link: present status, the leading document and all others. */
export function ownerPage(page: OwnerPage, fmt: Formatter): View {
  const { summary, standing, live, documents, path } = page;
  const leading = documents.find(({ id }) => id === page.leading) ?? documents[0];
  const place = { base: '#', documents, pictures: `${path}/documents/` };
  return {
    title: fmt.text(m.ownerPage_releasePack, { registration: summary.registration, number: summary.number }),
    registration: summary.registration,
    ...standing,
    releasedBy: summary.releasedBy,
    issuedAt: fmt.timestamp(summary.issuedAt),
    isOfWeighingAlone: live?.isOfWeighingAlone ?? false,
    until: live?.until ?? '',
    past: live?.past ?? [],
    tighter: live?.tighter ?? [],
    needsCare: needsCare(live),
    ask: page.askWhom === undefined ? [] : [page.askWhom],
    pack: summary.pack,
    sealedBy: page.sealedBy,
    sealKey: page.sealKey,
    leadingHtml: standing.isCurrent ? onScreen(leading?.html ?? '', place) : '',
    pdfHref: `${path}/pack.pdf`,
    documentsTitle: standing.isCurrent ? fmt.text(m.ownerPage_everythingPack) : fmt.text(m.ownerPage_whatStoodPackNo),
    documents: documents
      .filter((document) => !standing.isCurrent || document !== leading)
      .map(({ id, title, html }) => ({ href: `${place.pictures}${id}`, title, html: onScreen(html, place) })),
    expiresOn: fmt.day(page.expiresAt),
    pdfSha256: page.pdfSha256,
    hasLoading: live?.loading !== undefined,
    loadingJson: live?.loading === undefined ? '' : inScript(live.loading),
    openedAt: page.openedAt,
    openedOn: fmt.timestamp(page.openedAt),
  };
}

/** Returns JSON that is safe inside a page: no character can end the element around it. */
const inScript = (value: object): string => JSON.stringify(value).replaceAll('<', '\\u003c');
