import type { PdfFile } from './pdf-file.ts';

/**
 * A rule that a pack keeps, with the clause that asks for it. `defects` says what breaks it, nothing when it is kept.
 *
 * The clauses of ISO 19005-3 (`A-3`) and ISO 14289-1 (`UA-1`) are cited as the published validation profiles of these standards number
 * and word them; those of ISO 32000-1, and `UA-1` 7.17 and 7.18.4, from memory. `ours` marks what no clause asks for.
 */
export interface Check {
  name: string;
  clause: string;
  defects: (file: PdfFile) => string[];
}
