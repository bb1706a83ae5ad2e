import { LIMITS } from '../../limits.ts';
import { type Fault, fault } from '../../text/faults.ts';
import { Budget } from '../bytes/budget.ts';
import { textOfBytes } from '../bytes/byte-text.ts';
import { dictionaryOf, isStream, type PdfDictionary, type PdfObject } from '../pdf-object.ts';
import { damaged, tooManyBytes, unknownType } from '../refusal.ts';
import { refuseForbidden } from './active-content.ts';
import type { Inks } from './inks.ts';
import { type PageForm, pageForm } from './page-form.ts';
import { pagesOf } from './page-tree.ts';
import { PdfCopier } from './pdf-copier.ts';
import { openPdf, type PdfFile, pdfStart } from './pdf-file.ts';

// A pack with a document that is not PDF/A makes no claim: its pages become forms without their marks, and fonts and
// colours of others cannot be proved here. The claim relies on that of the document, and the release check notes it.

/** What is taken over from a PDF: its pages as forms, the objects these use, and why a file holding them cannot make the archival claims. */
export interface Annex {
  ok: true;
  pages: readonly PageForm[];
  objects: ReadonlyMap<number, PdfObject>;
  obstacles: readonly Fault[];
  inks: Inks;
}

// Much of PDF/A cannot be seen without a full validator: what a file does not claim of itself is not claimed for it. Part 4 builds on another
// version of PDF than the pack. Level b promises nothing of text: where that is what is missing, the paper needs another level.
function claimObstacles(file: PdfFile, catalogue: PdfDictionary, others: readonly Fault[]): Fault[] {
  const metadata = file.resolve(catalogue.get('Metadata'));
  const packet = isStream(metadata) ? textOfBytes(file.decode(metadata)) : '';
  if (!/pdfaid:part(?:>|\s*=\s*["'])\s*[123]\b/.test(packet)) return [fault('not-itself-claim-pdf')];
  const isBasic = /pdfaid:conformance(?:>|\s*=\s*["'])\s*[Bb]\b/.test(packet);
  return isBasic && others.length > 0 ? [fault('pdf-level-b-level-u-needed')] : [];
}

interface AnnexOptions {
  /** What reading it is charged to. @default a budget of its own */
  budget?: Budget;
  /** Goes through all that is unpacked by its readers only; done once, at the inspection. @default false */
  verify?: boolean;
}

/**
 * Reads a PDF and takes over its pages. Refuses, by `RefusedError`, what a pack cannot hold, and what costs more than the budget.
 *
 * What is charged without `verify` is charged with it as well: a file that passed inspection is never too costly afterwards.
 */
export function readAnnex(bytes: Uint8Array, { budget = new Budget(), verify = false }: AnnexOptions = {}): Annex {
  if (bytes.length > LIMITS.annexBytes) throw tooManyBytes(bytes.length);
  if (pdfStart(bytes) < 0) throw unknownType();
  const file = openPdf(bytes, budget);
  const catalogue = dictionaryOf(file.resolve(file.trailer.get('Root')));
  if (!catalogue.has('Pages')) throw damaged(fault('no-pages'));
  refuseForbidden(file, catalogue);
  const found = pagesOf(file, catalogue);
  if (found.length === 0) throw damaged(fault('no-pages'));
  const carrier = new PdfCopier(file, verify);
  const pages = found.map((page) => pageForm(page, file, carrier));
  const obstacles = carrier.obstacles();
  return {
    ok: true,
    pages,
    objects: carrier.objects,
    obstacles: [...obstacles, ...claimObstacles(file, catalogue, obstacles)],
    inks: carrier.inks,
  };
}
