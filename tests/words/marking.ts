import { FIGURES } from '../../worker/words/figures.ts';
import type { Lexicon } from '../../worker/words/lexicon.ts';

/** Texts that were looked up by a marking language, with the document in which they stand. */
export interface Asked {
  text: string;
  place: string | undefined;
}

/**
 * A language in which every text of ours is marked, and what is filled into it is not: whatever stands outside the marks was
 * never looked up, so no language can translate it.
 */
export function markingLexicon(): Lexicon & { asked: Asked[] } {
  const asked: Asked[] = [];
  return {
    language: 'de',
    figures: FIGURES.de,
    asked,
    find(text, place) {
      asked.push({ text, place });
      return `⟦${text.replace(/\{\d+\}/g, (value) => `⟧${value}⟦`)}⟧`;
    },
  };
}

/** What stands outside the marks. */
export function unmarked(text: string): string {
  return text.replace(/⟦[^⟦⟧]*⟧/g, ' ');
}
