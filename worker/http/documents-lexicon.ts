import type { PackDocument } from '../pipeline.ts';
import { languageOf } from '../words/language.ts';
import type { Lexicon } from '../words/lexicon.ts';
import { lexiconFor } from '../words/lexicons.ts';

/** A page speaks the language of the documents that it shows. */
export function lexiconOfDocuments([first]: readonly PackDocument[]): Lexicon {
  return lexiconFor(languageOf(/ lang="(\w+)"/.exec(first?.html ?? '')?.[1]));
}
