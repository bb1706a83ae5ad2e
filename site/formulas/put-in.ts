import type { Example, Sum } from './formula.ts';

/** Significant digits of what is given, and of a result: enough to follow it on a pocket calculator. */
const DIGITS = { given: 9, result: 7 } as const;

/** A number as the page works with it: as it is where it is whole or short, else to so many significant digits. */
export function cut(value: number, kind: keyof typeof DIGITS): number {
  return Number.isSafeInteger(value) ? value : Number(value.toPrecision(DIGITS[kind]));
}

/** A number in TeX. */
function texOf(value: number): string {
  const text = String(value);
  const [mantissa = '', power] = text.split('e');
  return power === undefined ? text : `${mantissa} \\cdot 10^{${Number(power)}}`;
}

/** Whether the page prints a number as it is, but for what binary fractions leave. */
const isWhole = (value: number): boolean => Math.abs(value - cut(value, 'result')) <= Math.abs(value) * 1e-12;

const escaped = (symbol: string): string => symbol.replaceAll(/[\\{}^+*?.()[\]|$]/g, '\\$&');

/** One symbol, command or text of a formula, the longest first. */
const tokenOf = (symbols: readonly string[]): RegExp => {
  const known = symbols.toSorted((a, b) => b.length - a.length).map((symbol) => `${escaped(symbol)}(?![a-zA-Z_])`);
  return new RegExp(`${[...known, String.raw`\\text\{[^}]*\}`, String.raw`\\[a-zA-Z]+`].join('|')}`, 'g');
};

/** TeX with numbers in the place of symbols. */
export function putIn(tex: string, values: ReadonlyMap<string, number>): string {
  return tex.replace(tokenOf([...values.keys()]), (token) => {
    const value = values.get(token);
    if (value === undefined) return token;
    const text = texOf(value);
    return value < 0 || text.includes('cdot') ? `(${text})` : `{${text}}`;
  });
}

/** A sum of an example with its numbers: the symbol, what is computed, and the result. */
export interface Worked {
  left: string;
  right: string;
  relation: '=' | '\\approx';
  result: string;
  unit: string;
}

/** Every sum of an example with the numbers put in; results of earlier sums are put into later ones. */
export function worked({ given, steps }: Example): Map<Sum, Worked> {
  const values = new Map(Object.entries(given).map(([symbol, [value]]) => [symbol, cut(value, 'given')]));
  const lines = new Map<Sum, Worked>();
  for (const step of steps) {
    if ('say' in step) continue;
    const [left = '', right = ''] = step.tex.split(' = ');
    const relation = isWhole(step.result) ? '=' : '\\approx';
    const line = {
      left,
      right: putIn(right, values),
      relation,
      result: texOf(cut(step.result, 'result')),
      unit: step.unit,
    } as const;
    lines.set(step, line);
    values.set(left, cut(step.result, 'result'));
  }
  return lines;
}
