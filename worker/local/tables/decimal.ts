import type { Delimiter } from './parse.ts';

/** Decimal mark in the numbers of a file; undefined if its numbers do not show it. */
export type DecimalMark = '.' | ',' | undefined;

const PLAIN = /^[+-]?\d+(e[+-]?\d+)?$/i;
const POINTED = /^[+-]?\d*\.\d+(e[+-]?\d+)?$/i;
const WITH_COMMA = /^[+-]?\d*,\d+(e[+-]?\d+)?$/i;
/**
 * Ambiguous number: `1.982` may be less than two, or nearly two thousand. Half of Europe groups thousands by points,
 * the other half by commas.
 */
const GROUPED = /^[+-]?\d{1,3}[.,]\d{3}$/;

/**
 * Returns the decimal mark. If commas separate columns, points mark decimals. Else the numbers show it. Semicolons are
 * used because commas mark decimals; tabs show nothing, because every spreadsheet copies with them.
 */
export function decimalMarkOf(numbers: readonly string[], delimiter: Delimiter): DecimalMark {
  if (delimiter === ',') return '.';
  const tells = (form: RegExp): boolean => numbers.some((number) => form.test(number) && !GROUPED.test(number));
  if (tells(WITH_COMMA) || (delimiter === ';' && numbers.some((number) => WITH_COMMA.test(number)))) return ',';
  return tells(POINTED) ? '.' : undefined;
}

/** Parses the number in a cell; `unclear` if it is ambiguous, and the cell itself if it is not a number. */
export function numberIn(cell: string, mark: DecimalMark): number | string | { unclear: string } {
  const text = cell.trim();
  if (PLAIN.test(text)) return Number(text);
  if (mark === '.' && POINTED.test(text)) return Number(text);
  if (mark === ',' && WITH_COMMA.test(text)) return Number(text.replace(',', '.'));
  const isNumber = POINTED.test(text) || WITH_COMMA.test(text);
  return isNumber ? { unclear: text } : cell;
}
