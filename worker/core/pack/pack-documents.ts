import * as m from '../text/generated/messages.ts';
import type { PackContext } from './context.ts';
import { sha256 } from './digest.ts';
import type { DocumentDigest } from './document-digest.ts';
import { DOCUMENT_KINDS } from './documents.ts';
import { render } from './render.ts';
import { coverView } from './views/cover.ts';
import { recordOfIssueView } from './views/record-of-issue.ts';

/** A document as one article of the HTML subset, for the browser and the typesetter. */
export interface PackDocument {
  id: string;
  title: string;
  html: string;
  /** SHA-256 of an attached document whose pages follow. */
  appends?: string;
}

export interface PackDocumentsOptions {
  /** The only document to print. @default all are printed together */
  alone?: string | undefined;
}

/** Returns every document that a visit requires, filled; the last one contains the digests of those before it. */
export async function packDocuments(
  context: PackContext,
  { alone }: PackDocumentsOptions = {},
): Promise<{ documents: PackDocument[]; digests: DocumentDigest[] }> {
  const { text, locale } = context.fmt;
  const body = DOCUMENT_KINDS.flatMap((kind) =>
    kind
      .instances(context)
      .map(({ view, ...document }) => ({ ...document, html: render(kind.template, view, locale) })),
  );
  const recordOfIssue = { id: 'record-of-issue', title: text(m.recordIssue) };
  const following = [...body, recordOfIssue].map(({ id, title }) => ({ id, title, isAboard: alone === undefined }));
  const cover = {
    id: 'cover',
    title: text(m.packDocuments_coverContents),
    html: render('cover', coverView(context, following), locale),
  };
  const before = [cover, ...body];
  const digests = await Promise.all(
    before.map(async ({ id, title, html }) => ({ id, title, sha256: await sha256(html) })),
  );
  const last = { ...recordOfIssue, html: render('record-of-issue', recordOfIssueView(context, digests), locale) };
  return {
    documents: [...before, last],
    digests: [...digests, { id: last.id, title: last.title, sha256: await sha256(last.html) }],
  };
}
