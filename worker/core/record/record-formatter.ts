import { type Formatter, formatterFor } from '../text/formatter.ts';
import { languageOf } from '../text/languages.ts';
import { type Locale, localeOf } from '../text/locale.ts';
import { localZone } from './local-zone.ts';
import type { Visit } from './visit.ts';

/**
 * Returns a formatter in the units, the language and the time zone of a record.
 *
 * @param locale language other than that of the record
 */
export function recordFormatter(visit: Pick<Visit, 'units' | 'workshop' | 'visit'>, locale?: Locale): Formatter {
  const { units, workshop } = visit;
  return formatterFor(units, locale ?? localeOf(languageOf(workshop.language)), localZone(visit));
}
