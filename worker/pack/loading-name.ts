import type { ShownLoading } from '../calc/loading-sheet.ts';
import type { Printer } from '../text/print.ts';
import { phrase } from '../words/words.ts';

const NAMES: Readonly<Record<ShownLoading, string>> = {
  foremost: phrase`Foremost legal loading`,
  rearmost: phrase`Rearmost legal loading`,
  'standard-pilot': phrase`Standard pilot alone`,
  'two-standard-persons': phrase`Two standard persons`,
};

/** The same inside a sentence. */
const CAPTIONS: Readonly<Record<ShownLoading, string>> = {
  foremost: phrase`foremost legal loading`,
  rearmost: phrase`rearmost legal loading`,
  'standard-pilot': phrase`standard pilot alone`,
  'two-standard-persons': phrase`two standard persons`,
};

/** A loading of the loading sheet, as a row of a table names it. */
export function loadingName(kind: ShownLoading, say: Pick<Printer, 'term'>): string {
  return say.term(NAMES[kind]);
}

/** A loading of the loading sheet inside a sentence. */
export function loadingInCaption(kind: ShownLoading, say: Pick<Printer, 'term'>): string {
  return say.term(CAPTIONS[kind]);
}
