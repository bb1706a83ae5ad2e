import type { Quantity, Said, Sum } from './formula.ts';

/** Returns a line of an example that can be checked with a pocket calculator. */
export function sum(tex: string, result: number, unit = '', expected?: string): Sum {
  return { tex, result, unit, ...(expected !== undefined && { expected }) };
}

/** Returns a line of an example in words. */
export function said(say: string, results?: Readonly<Record<string, number>>): Said {
  return { say, ...(results && { results }) };
}

/** Returns terms for 1, 2 … joined by plus signs. */
export function summed(count: number, termOf: (number: number) => string): string {
  return Array.from({ length: count }, (_, index) => termOf(index + 1)).join(' + ');
}

/** Returns the values of a list as `m_1`, `m_2` … */
export function numbered(symbol: string, values: readonly number[], unit: string): Record<string, Quantity> {
  return Object.fromEntries(values.map((value, index) => [`${symbol}_${index + 1}`, [value, unit] as const]));
}
