import { languageOf } from '../../core/text/languages.ts';
import { type Locale, localeOf } from '../../core/text/locale.ts';

/** Returns the reader's first language that is available. */
export function localeOfReader({ headers }: Request): Locale {
  const asked = (headers.get('Accept-Language') ?? '').split(',').map((range) => range.trim().slice(0, 2));
  return localeOf(languageOf(asked.find((wanted) => wanted === languageOf(wanted))));
}
