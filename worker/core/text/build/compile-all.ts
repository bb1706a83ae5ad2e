import * as categories from 'make-plural/pluralCategories';
import { type CompiledMessage, compileMessage } from './compile-message.ts';

interface Texts {
  language: string;
  texts: Readonly<Record<string, string>>;
}

export interface Declared {
  id: string;
  /** TypeScript of the type of the message. */
  type: string;
  /** TypeScript of the message in every language. */
  code: string;
}

/**
 * Compiles the texts of every language; the first language defines the ids.
 *
 * @throws Error when a language has other ids, or other values in a message
 */
export function compileAll(languages: readonly Texts[]): Declared[] {
  const [first, ...others] = languages;
  if (!first) return [];
  for (const { language, texts } of others) {
    const odd = [...new Set([...Object.keys(first.texts), ...Object.keys(texts)])].filter(
      (id) => !(id in first.texts && id in texts),
    );
    if (odd.length > 0)
      throw new Error(`${first.language} and ${language} do not have the same messages: ${odd.join(', ')}`);
  }
  return Object.keys(first.texts)
    .sort()
    .map((id) => declared(id, languages));
}

function declared(id: string, languages: readonly Texts[]): Declared {
  const forms = languages.map(({ language, texts }) => compiled(id, language, texts[id] ?? ''));
  const [type = '', ...differing] = new Set(forms.map(typeOf));
  if (differing.length > 0)
    throw new Error(`The languages of ${id} take different values: ${[type, ...differing].join(' and ')}`);
  return {
    id,
    type: type === '' ? 'Message' : `Message<{ ${type} }>`,
    code: `[${forms.map(({ code }) => code).join(', ')}]`,
  };
}

function compiled(id: string, language: string, text: string): CompiledMessage {
  try {
    return compileMessage(
      text,
      (categories as Record<string, { cardinal: string[] }>)[language]?.cardinal ?? ['other'],
    );
  } catch (error) {
    throw new Error(`Cannot compile ${id} of ${language}: ${(error as Error).message}`);
  }
}

/** Returns the values of a message as TypeScript. A language without a choice of forms may print only the value. */
function typeOf({ values }: CompiledMessage): string {
  return [...values]
    .map(([name, type]) => `${name}: ${type}`)
    .sort()
    .join('; ');
}
