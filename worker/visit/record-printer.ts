import { type Printer, printerFor } from '../text/print.ts';
import { languageOf } from '../words/language.ts';
import type { Lexicon } from '../words/lexicon.ts';
import { lexiconFor } from '../words/lexicons.ts';
import { localZone } from './local-zone.ts';
import type { Visit } from './visit.ts';

/**
 * A printer in the units, the language and the time zone of a record.
 *
 * @param lexicon another language than that of the record
 */
export function recordPrinter(visit: Pick<Visit, 'units' | 'workshop' | 'visit'>, lexicon?: Lexicon): Printer {
  const { units, workshop } = visit;
  return printerFor(units, lexicon ?? lexiconFor(languageOf(workshop.language)), localZone(visit));
}
