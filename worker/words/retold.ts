import { KEPT } from './generated/german.ts';
import type { Lexicon } from './lexicon.ts';
import { filled } from './words.ts';

/** The English texts that are kept as they were told, each with a pattern of what it becomes once it is filled. */
const PATTERNS = KEPT.map((text) => ({ text, pattern: patternOf(text) }));

/**
 * A sentence that was told and kept in English, in another language: what is the matter with a file is worked out once, when it
 * is handed in, and the record that names it may be of any language. A sentence that is not ours stays as it is.
 *
 * @example retold('it has 13.5 MB, and 12 MB are the most', german)  // 'hat 13,5 MB, höchstens 12 MB sind zulässig'
 */
export function retold(sentence: string, lexicon: Lexicon): string {
  for (const { text, pattern } of PATTERNS) {
    const values = pattern.exec(sentence)?.slice(1);
    if (values)
      return filled(
        lexicon.find(text),
        values.map((value) => figureOf(value, lexicon)),
      );
  }
  return sentence;
}

function patternOf(text: string): RegExp {
  const literal = text.split(/\{\d+\}/).map((part) => part.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'));
  return new RegExp(`^${literal.join('(.+)')}$`);
}

function figureOf(value: string, { figures }: Lexicon): string {
  return value.replace(/^(\d+)\.(\d+)$/, `$1${figures.decimalSign}$2`);
}
