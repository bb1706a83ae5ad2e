import { parse, type Select, type Token } from '@messageformat/parser';

/** A message as code, with its values. */
export interface CompiledMessage {
  /** An expression: a string, or a function of the values and the speech of a language. */
  code: string;
  /** The TypeScript type of each value by its name. */
  values: ReadonlyMap<string, string>;
}

/**
 * Compiles an ICU message to code. Arguments are plain (`{wire}`) or select a form (`plural`, `select`); figures are
 * formatted by their values, so formats in the text (`{n, number}`) are refused, and so are ordinals.
 *
 * @param categories plural categories of the language, `other` among them
 * @throws Error when the text is not valid, or a plural lacks a category of the language
 * @example compileMessage('Wire {wire}', ['one', 'other']).code  // '(v, s) => "Wire " + s.text(v.wire)'
 */
export function compileMessage(text: string, categories: readonly string[]): CompiledMessage {
  const values = new Map<string, string>();
  const expression = new Compiler(values, categories).tokens(parse(text, { strict: true }), undefined);
  return { code: values.size === 0 ? expression : `(v, s) => ${expression}`, values };
}

class Compiler {
  readonly #values: Map<string, string>;
  readonly #categories: readonly string[];

  constructor(values: Map<string, string>, categories: readonly string[]) {
    this.#values = values;
    this.#categories = categories;
  }

  /** @param counted the value printed for `#` */
  tokens(tokens: readonly Token[], counted: string | undefined): string {
    const parts = tokens.map((token) => this.#token(token, counted));
    return parts.length === 0 ? '""' : parts.join(' + ');
  }

  #token(token: Token, counted: string | undefined): string {
    if (token.type === 'content') return JSON.stringify(token.value);
    if (token.type === 'octothorpe') return `s.text(v.${counted})`;
    if (token.type === 'argument') {
      if (!this.#values.has(token.arg)) this.#values.set(token.arg, 'Value');
      return `s.text(v.${token.arg})`;
    }
    if (token.type === 'plural') return this.#plural(token);
    if (token.type === 'select') return this.#select(token, counted);
    const what = token.type === 'function' ? token.key : token.type;
    throw new Error(`Cannot compile a message: ${what} is not used here`);
  }

  #plural({ arg, cases }: Select): string {
    this.#values.set(arg, 'number');
    const named = new Set(cases.map(({ key }) => key));
    const missing = this.#categories.filter((category) => !named.has(category));
    if (missing.length > 0)
      throw new Error(`Cannot compile a message: the plural of ${arg} lacks ${missing.join(', ')}`);
    return this.#choice(
      cases.map(({ key, tokens }) => [
        key,
        key.startsWith('=') ? `v.${arg} === ${Number(key.slice(1))}` : `s.plural(v.${arg}) === ${JSON.stringify(key)}`,
        this.tokens(tokens, arg),
      ]),
    );
  }

  #select({ arg, cases }: Select, counted: string | undefined): string {
    const keys = cases.map(({ key }) => key).filter((key) => key !== 'other');
    this.#values.set(arg, [...keys.map((key) => JSON.stringify(key)), '(string & {})'].join(' | '));
    return this.#choice(
      cases.map(({ key, tokens }) => [key, `v.${arg} === ${JSON.stringify(key)}`, this.tokens(tokens, counted)]),
    );
  }

  #choice(cases: readonly (readonly [key: string, test: string, text: string])[]): string {
    const last = cases.find(([key]) => key === 'other')?.[2] ?? '""';
    return `(${cases
      .filter(([key]) => key !== 'other')
      .map(([, test, text]) => `${test} ? ${text} : `)
      .join('')}${last})`;
  }
}
