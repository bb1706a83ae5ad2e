import type { Printer } from '../../text/print.ts';
import { codePointName, unprintableIn } from '../../text/printable.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const textUnprintable: Rule = {
  code: 'TEXT_UNPRINTABLE',
  severity: 'blocks',
  meaning: 'A text has characters that no pack can print',
  remedy: phrase`Write it in Latin letters and the signs listed in the guide`,
  source: PRACTICE,
  check: ({ visit, say }) => {
    const hits: Hit[] = [];
    // One path, lengthened and shortened on the way: nearly no text is worth a copy of it.
    const path: (string | number)[] = [];
    const walk = (within: object): void => {
      for (const key in within) {
        const value: unknown = within[key as keyof object];
        if (typeof value === 'string') {
          const characters = unprintableIn(value);
          if (characters.length > 0) hits.push(hitAt(say, [...path, key], characters.map(codePointName)));
        } else if (typeof value === 'object' && value !== null) {
          path.push(key);
          walk(value);
          path.pop();
        }
      }
    };
    walk(visit);
    return hits;
  },
};

function hitAt(say: Printer, path: Hit['path'], characters: readonly string[]): Hit {
  return {
    path,
    sentence: say.words`The text has characters that cannot be printed: ${characters.join(', ')}`,
    data: { characters: characters.join(' ') },
  };
}
