import type { Example, Sum } from './formula.ts';

/** Significant digits of input and results: enough to check them with a pocket calculator. */
const DIGITS = { given: 9, result: 7 } as const;

/** Rounds a number to the digits that the page works with; a whole or short number stays exact. */
export function cut(value: number, kind: keyof typeof DIGITS): number {
  return Number.isSafeInteger(value) ? value : Number(value.toPrecision(DIGITS[kind]));
}

/** Returns a number in TeX. */
function texOf(value: number): string {
  const text = String(value);
  const [mantissa = '', power] = text.split('e');
  return power === undefined ? text : `${mantissa} \\cdot 10^{${Number(power)}}`;
}

/** Whether a number is printed exactly, apart from the error of binary fractions. */
const isWhole = (value: number): boolean => Math.abs(value - cut(value, 'result')) <= Math.abs(value) * 1e-12;

const escaped = (symbol: string): string => symbol.replaceAll(/[\\{}^+*?.()[\]|$]/g, '\\$&');

/** Returns the pattern of one symbol, command or text of a formula, the longest first. */
const tokenOf = (symbols: readonly string[]): RegExp => {
  const known = symbols.toSorted((a, b) => b.length - a.length).map((symbol) => `${escaped(symbol)}(?![a-zA-Z_])`);
  return new RegExp(`${[...known, String.raw`\\text\{[^}]*\}`, String.raw`\\[a-zA-Z]+`].join('|')}`, 'g');
};

/** Replaces symbols in TeX by numbers. */
export function putIn(tex: string, values: ReadonlyMap<string, number>): string {
  return tex.replace(tokenOf([...values.keys()]), (token) => {
    const value = values.get(token);
    if (value === undefined) return token;
    const text = texOf(value);
    return value < 0 || text.includes('cdot') ? `(${text})` : `{${text}}`;
  });
}

/** Sum of an example with its numbers: the symbol, the calculation, and the result. */
export interface Worked {
  left: string;
  right: string;
  relation: '=' | '\\approx';
  result: string;
  unit: string;
}

/** Returns every sum of an example with its numbers; later sums use the results of earlier ones. */
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
