import { unprintableIn } from '../../units/printable.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const textUnprintable: Rule = {
  code: 'TEXT_UNPRINTABLE',
  severity: 'blocks',
  meaning: 'A text has characters that no pack can print',
  remedy: 'Write it in Latin letters and the signs listed in the guide',
  source: PRACTICE,
  check: ({ visit }) => {
    const hits: Hit[] = [];
    const walk = (value: unknown, path: readonly (string | number)[]): void => {
      if (typeof value === 'string') {
        const characters = unprintableIn(value);
        if (characters.length > 0)
          hits.push({
            path,
            sentence: `The text has characters that cannot be printed: ${characters.map(named).join(', ')}`,
            data: { characters: characters.map(named).join(' ') },
          });
      } else if (Array.isArray(value)) {
        for (const [index, entry] of value.entries()) walk(entry, [...path, index]);
      } else if (typeof value === 'object' && value !== null) {
        for (const [key, entry] of Object.entries(value)) walk(entry, [...path, key]);
      }
    };
    walk(visit, []);
    return hits;
  },
};

/** A character by its code point, since it cannot be shown. */
function named(character: string): string {
  return `U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`;
}
