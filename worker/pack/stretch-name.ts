import type { Stretch } from '../calc/electrical/electrical-result.ts';
import type { Printer } from '../text/print.ts';
import { phrase } from '../words/words.ts';

const NAMES: Readonly<Record<Stretch['use'], string>> = {
  'before-shedding': phrase`Until loads are shed`,
  'essential-loads': phrase`Essential loads`,
  landing: phrase`Approach and landing`,
};

/** A stretch of flight on the battery. */
export function stretchName(use: Stretch['use'], say: Pick<Printer, 'term'>): string {
  return say.term(NAMES[use]);
}
