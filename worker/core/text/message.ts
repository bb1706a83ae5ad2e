import type { PluralCategory } from 'make-plural/pluralCategories';
import type { Figure } from './figure.ts';

/** Value of a message: text printed unchanged, a count, a figure in the reader's units, a message, or a list of these. */
export type Value = string | number | Figure | Said | List;

/** Several values with a separator text. */
export interface List {
  readonly items: readonly Value[];
  readonly between: string | Said;
}

/** Functions of a language that the form of a message needs. */
export interface Speech {
  text(value: Value): string;
  plural(count: number): PluralCategory;
}

/** A message in one language. */
export type Form<Values> = string | ((values: Values, speech: Speech) => string);

/** Values of a message without any. */
export type NoValues = Record<never, never>;

/** A message in every language, in the order of `LANGUAGES`. The build makes them from the catalogues in `messages/`. */
export type Message<Values extends object = NoValues> = readonly Form<Values>[];

/** Arguments that fill a message: empty if it has no values. */
export type Filling<Values extends object> = keyof Values extends never ? [] : [values: Values];

/** A message with its values, not yet in any language. */
export interface Said {
  readonly message: readonly Form<never>[];
  readonly values: object;
}

/**
 * Returns a message with its values.
 *
 * @example said(m.wireEndOpen_end, { wire: 'W12', end: 'J1:4' })
 */
export function said<Values extends object>(message: Message<Values>, ...[values]: Filling<Values>): Said {
  return { message, values: values ?? {} };
}

/** Returns values with a separator text, a comma by default. */
export function list(items: readonly Value[], between: string | Said = ', '): List {
  return { items, between };
}
