import { type Printer, printerFor } from '../units/print.ts';
import { languageOf } from '../words/language.ts';
import type { Lexicon } from '../words/lexicon.ts';
import { lexiconFor } from '../words/lexicons.ts';
import type { Visit } from './visit.ts';

/**
 * A printer in the units and the language of a record.
 *
 * @param lexicon another language than that of the record
 */
export function recordPrinter({ units, workshop }: Pick<Visit, 'units' | 'workshop'>, lexicon?: Lexicon): Printer {
  return printerFor(units, lexicon ?? lexiconFor(languageOf(workshop.language)));
}
