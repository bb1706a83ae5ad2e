import { LIMITS } from '../../limits.ts';
import { inEnglish, phrase } from '../../words/words.ts';
import { textOfBytes } from '../bytes/byte-text.ts';
import { damaged, RefusedError } from '../refusal.ts';
import { Carrier } from './carry.ts';
import { refuseForbidden } from './forbidden.ts';
import { type PageForm, pageForm } from './page-form.ts';
import { pagesOf } from './page-tree.ts';
import { openPdf, type PdfFile } from './pdf-file.ts';
import { dictionaryOf, isStream, type PdfDictionary, type PdfObject } from './pdf-object.ts';

/** What is taken over from a PDF: its pages as forms, the objects these use, and why a file holding them cannot make the archival claims. */
export interface Annex {
  pages: readonly PageForm[];
  objects: ReadonlyMap<number, PdfObject>;
  obstacles: readonly string[];
}

// Much of PDF/A cannot be seen without a full validator: what a file does not claim of itself is not claimed for it. Part 4 builds on another
// version of PDF than the pack.
function claimsArchival(file: PdfFile, catalogue: PdfDictionary): boolean {
  const metadata = file.resolve(catalogue.get('Metadata'));
  return isStream(metadata) && /pdfaid:part(?:>|\s*=\s*["'])\s*[123]\b/.test(textOfBytes(file.decode(metadata)));
}

/** Reads a PDF and takes over its pages. Refuses, by `RefusedError`, what a pack cannot hold; costs no more than the file is long. */
export function readAnnex(bytes: Uint8Array): Annex {
  if (bytes.length > LIMITS.annexBytes) throw tooManyBytes(bytes.length);
  const file = openPdf(bytes);
  const catalogue = dictionaryOf(file.resolve(file.trailer.get('Root')));
  if (!catalogue.has('Pages')) throw damaged(phrase`it has no pages`);
  refuseForbidden(file, catalogue);
  const found = pagesOf(file, catalogue);
  if (found.length === 0) throw damaged(phrase`it has no pages`);
  const carrier = new Carrier(file);
  const pages = found.map((page) => pageForm(page, file, carrier));
  const unclaimed = claimsArchival(file, catalogue) ? [] : [phrase`it does not itself claim to be PDF/A`];
  return { pages, objects: carrier.objects, obstacles: [...carrier.obstacles, ...unclaimed] };
}

/** The refusal of a file of too many bytes. */
export function tooManyBytes(length: number): RefusedError {
  return new RefusedError(
    'too-large',
    inEnglish`it has ${(length / 1e6).toFixed(1)} MB, and ${LIMITS.annexBytes / 1e6} MB are the most`,
  );
}
