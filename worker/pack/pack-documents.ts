import type { PackContext } from './context.ts';
import { sha256 } from './digest.ts';
import { DOCUMENT_KINDS } from './documents.ts';
import { render } from './render.ts';
import { coverView } from './views/cover.ts';
import { type DocumentDigest, recordOfIssueView } from './views/record-of-issue.ts';

/** A document as one article of the HTML subset: what the browser shows and the typesetter prints. */
export interface PackDocument {
  id: string;
  title: string;
  html: string;
  /** SHA-256 of a paper whose pages follow its own. */
  appends?: string;
}

const COVER = { id: 'cover', title: 'Cover and contents' } as const;
const RECORD_OF_ISSUE = { id: 'record-of-issue', title: 'Record of issue' } as const;

export interface PackDocumentsOptions {
  /** The one document that will be printed by itself. @default all are printed together */
  alone?: string | undefined;
}

/** Every document that a visit calls for, filled; the last one holds the digests of those before it. */
export async function packDocuments(
  context: PackContext,
  { alone }: PackDocumentsOptions = {},
): Promise<{ documents: PackDocument[]; digests: DocumentDigest[] }> {
  const body = DOCUMENT_KINDS.flatMap((kind) =>
    kind.instances(context).map(({ view, ...document }) => ({ ...document, html: render(kind.template, view) })),
  );
  const following = [...body, RECORD_OF_ISSUE].map(({ id, title }) => ({ id, title, isAboard: alone === undefined }));
  const cover = { ...COVER, html: render('cover', coverView(context, following)) };
  const before = [cover, ...body];
  const digests = await Promise.all(
    before.map(async ({ id, title, html }) => ({ id, title, sha256: await sha256(html) })),
  );
  const last = { ...RECORD_OF_ISSUE, html: render('record-of-issue', recordOfIssueView(context, digests)) };
  return {
    documents: [...before, last],
    digests: [...digests, { id: last.id, title: last.title, sha256: await sha256(last.html) }],
  };
}
