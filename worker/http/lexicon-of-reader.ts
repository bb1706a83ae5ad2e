import { languageOf } from '../words/language.ts';
import type { Lexicon } from '../words/lexicon.ts';
import { lexiconFor } from '../words/lexicons.ts';

/** The first language of a reader that we have. */
export function lexiconOfReader({ headers }: Request): Lexicon {
  const asked = (headers.get('Accept-Language') ?? '').split(',').map((range) => range.trim().slice(0, 2));
  return lexiconFor(languageOf(asked.find((wanted) => wanted === languageOf(wanted))));
}
