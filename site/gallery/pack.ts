import { getDocument, type PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { assess, seal } from '../../worker/core/core.ts';
import { exampleRecord } from '../../worker/local/service/example-visit.ts';
import { filesIn } from '../../worker/local/service/files-in.ts';
import { ATTACHMENTS, FULL_EXAMPLE } from '../build/examples.ts';

/** A document of the pack that is shown, and the pages that it stands on, from 1. */
export interface ShownDocument {
  title: string;
  first: number;
  last: number;
}

/** The pack of the full example as the service makes it: invented people release an invented aircraft, and no workshop seals it. */
async function madePack(): Promise<Uint8Array> {
  const { name, at } = FULL_EXAMPLE;
  const { files, facts } = await filesIn(ATTACHMENTS);
  const outcome = await assess(exampleRecord(name), at, { attachments: facts });
  if (!outcome.ok) throw new Error('Cannot show a pack: the example is not understood');
  const { assessed } = outcome;
  const { registration } = assessed.record.aircraft;
  const attestation = {
    by: assessed.record.release?.by ?? '',
    read: assessed.assessmentSha256,
    knowsOfNoHazard: true,
    at,
  };
  const place = { pack: `${registration}-P1-1`, number: 1, issue: 1, visit: 'example', before: [] };
  const sealing = await seal(assessed, attestation, place, files);
  if (!sealing.ok) throw new Error('Cannot show a pack: the example is not releasable');
  return sealing.sealed.pdf;
}

/** Where each document begins, as the bookmarks of the file tell. */
async function documentsOf(file: PDFDocumentProxy): Promise<ShownDocument[]> {
  const outline = (await file.getOutline()) ?? [];
  const starts = await Promise.all(
    outline.map(async ({ title, dest }) => {
      const place = typeof dest === 'string' ? await file.getDestination(dest) : dest;
      return { title, first: (await file.getPageIndex(place?.[0])) + 1 };
    }),
  );
  return starts.map((start, index) => ({ ...start, last: (starts[index + 1]?.first ?? file.numPages + 1) - 1 }));
}

export const PACK_BYTES = await madePack();
export const PACK_FILE = await getDocument({ data: PACK_BYTES.slice(), verbosity: 0 }).promise;
export const PACK_DOCUMENTS = await documentsOf(PACK_FILE);
