import type { PluralCategory } from 'make-plural/pluralCategories';
import type { Figure } from './figure.ts';

/** A value of a message: text that is printed as it is, a count, a figure in the reader's units, a message, or a list of these. */
export type Value = string | number | Figure | Said | List;

/** Several values with a text between them. */
export interface List {
  readonly items: readonly Value[];
  readonly between: string | Said;
}

/** What the form of a message needs of a language. */
export interface Speech {
  text(value: Value): string;
  plural(count: number): PluralCategory;
}

/** A message in one language. */
export type Form<Values> = string | ((values: Values, speech: Speech) => string);

/** The values of a message without any. */
export type NoValues = Record<never, never>;

/** A message in every language, in the order of `LANGUAGES`. The build makes them from the catalogues in `messages/`. */
export type Message<Values extends object = NoValues> = readonly Form<Values>[];

/** The arguments that fill a message: none where it has no values. */
export type Filling<Values extends object> = keyof Values extends never ? [] : [values: Values];

/** A message with its values, in no language yet. */
export interface Said {
  readonly message: readonly Form<never>[];
  readonly values: object;
}

/**
 * A message with its values.
 *
 * @example said(m.wireEndOpen_end, { wire: 'W12', end: 'J1:4' })
 */
export function said<Values extends object>(message: Message<Values>, ...[values]: Filling<Values>): Said {
  return { message, values: values ?? {} };
}

/** Values with a text between them, a comma by default. */
export function list(items: readonly Value[], between: string | Said = ', '): List {
  return { items, between };
}
