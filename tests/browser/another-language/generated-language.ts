import { parse, type Token } from '@messageformat/parser';

/**
 * Letters with accents for those without, all of them printable in a pack. What stands in braces, tags or entities is no text.
 */
const ACCENTS: Readonly<Record<string, string>> = {
  a: 'á',
  c: 'č',
  e: 'ě',
  i: 'í',
  n: 'ñ',
  o: 'ö',
  s: 'š',
  u: 'ů',
  y: 'ý',
  z: 'ž',
};

/** A text with accents, and a third longer than it was, so that it takes the room of a wordy language. */
export function lengthened(text: string): string {
  const accented = text.replace(/&\w+;|[a-z]/g, (sign) => ACCENTS[sign] ?? sign);
  return accented.replace(
    /(\p{L}{4,})/gu,
    (word) => `${word}${word.slice(0, Math.ceil(word.length / 3)).toLowerCase()}`,
  );
}

const quoted = (text: string): string => text.replace(/[{}#]/g, (sign) => `'${sign}'`);

/** A message of English in a language that has three forms of a plural: one, few, other (those of Croatian). */
function generatedMessage(message: string): string {
  return textOf(parse(message));
}

function textOf(tokens: readonly Token[], counted?: string): string {
  return tokens
    .map((token) => {
      if (token.type === 'content')
        return counted === undefined ? lengthened(token.value) : quoted(lengthened(token.value));
      if (token.type === 'octothorpe') return '#';
      if (token.type === 'argument') return `{${token.arg}}`;
      if (token.type === 'plural' || token.type === 'select') {
        const cases = token.cases.map(({ key, tokens: within }) => [key, textOf(within, token.arg)] as const);
        const other = cases.find(([key]) => key === 'other')?.[1] ?? '';
        const all = token.type === 'plural' ? [...cases, ['few', `${other} (3)`] as const] : cases;
        return `{${token.arg}, ${token.type}, ${all.map(([key, text]) => `${key} {${text}}`).join(' ')}}`;
      }
      throw new Error(`A message of English has a ${token.type}`);
    })
    .join('');
}

/** The texts of a file of a catalogue: messages, or title and help of fields. */
export interface Texts {
  [id: string]: string | Texts;
}

/** A file of a catalogue in the generated language. */
export function generatedTexts(english: Texts): Texts {
  return Object.fromEntries(
    Object.entries(english).map(([id, text]) => [
      id,
      typeof text === 'string' ? generatedMessage(text) : generatedTexts(text),
    ]),
  );
}
