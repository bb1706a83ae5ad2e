import type { Delimiter } from './parse.ts';

/** What marks the decimals in the numbers of a file; undefined where its numbers do not tell. */
export type DecimalMark = '.' | ',' | undefined;

const PLAIN = /^[+-]?\d+(e[+-]?\d+)?$/i;
const POINTED = /^[+-]?\d*\.\d+(e[+-]?\d+)?$/i;
const WITH_COMMA = /^[+-]?\d*,\d+(e[+-]?\d+)?$/i;
/** `1.982` may be less than two, or nearly two thousand: half of Europe groups thousands by points, the other half by commas. */
const GROUPED = /^[+-]?\d{1,3}[.,]\d{3}$/;

/**
 * Where commas separate columns, points mark decimals. Elsewhere the numbers themselves tell. Who separates by semicolons does so
 * because commas mark decimals; tabs say nothing, for every spreadsheet copies with them.
 */
export function decimalMarkOf(numbers: readonly string[], delimiter: Delimiter): DecimalMark {
  if (delimiter === ',') return '.';
  const tells = (form: RegExp): boolean => numbers.some((number) => form.test(number) && !GROUPED.test(number));
  if (tells(WITH_COMMA) || (delimiter === ';' && numbers.some((number) => WITH_COMMA.test(number)))) return ',';
  return tells(POINTED) ? '.' : undefined;
}

/** The number that a cell holds; `unclear` where it may be two, and the cell itself where it is none. */
export function numberIn(cell: string, mark: DecimalMark): number | string | { unclear: string } {
  const text = cell.trim();
  if (PLAIN.test(text)) return Number(text);
  if (mark === '.' && POINTED.test(text)) return Number(text);
  if (mark === ',' && WITH_COMMA.test(text)) return Number(text.replace(',', '.'));
  const isNumber = POINTED.test(text) || WITH_COMMA.test(text);
  return isNumber ? { unclear: text } : cell;
}
