import { languageOf } from '../text/languages.ts';
import { type Locale, localeOf } from '../text/locale.ts';
import { type Printer, printerFor } from '../text/print.ts';
import { localZone } from './local-zone.ts';
import type { Visit } from './visit.ts';

/**
 * A printer in the units, the language and the time zone of a record.
 *
 * @param locale another language than that of the record
 */
export function recordPrinter(visit: Pick<Visit, 'units' | 'workshop' | 'visit'>, locale?: Locale): Printer {
  const { units, workshop } = visit;
  return printerFor(units, locale ?? localeOf(languageOf(workshop.language)), localZone(visit));
}
