/**
 * The reader of foreign PDFs. Only this file is imported from outside its folder. Bytes go in; facts, pages and objects come out as plain
 * data, and so does a refusal: both functions could run in another Worker.
 */
import { Budget } from '../bytes/budget.ts';
import { orRefused, type Refused } from '../refusal.ts';
import { type PdfFacts, pdfFacts } from './pdf-facts.ts';
import { type Annex, readAnnex } from './read-annex.ts';

export type { PageForm } from './page-form.ts';
export type { Annex, PdfFacts };

/** Inspects a PDF and unpacks all of it. A file that passes is never refused by `readPdf`. */
export function inspectPdf(bytes: Uint8Array): PdfFacts | Refused {
  return orRefused(() => {
    const budget = new Budget();
    return pdfFacts(readAnnex(bytes, { budget, verify: true }), budget.spent);
  });
}

/** Reads the pages of a PDF and the objects that they use. Streams may be views of the given bytes, or of larger ones. */
export function readPdf(bytes: Uint8Array): Annex | Refused {
  return orRefused(() => readAnnex(bytes));
}
