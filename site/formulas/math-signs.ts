import type { Html } from '../../worker/local/markup/html.ts';

/** Where the letters of mathematics stand: what browsers draw a variable of one letter with. */
const ITALIC = [
  { from: 'A', to: 'Z', at: 0x1d434 },
  { from: 'a', to: 'z', at: 0x1d44e },
  { from: 'α', to: 'ω', at: 0x1d6fc },
] as const;

/** The letter h had a place of its own before the others came. */
const PLANCK = 'ℎ';

/** Signs that are drawn without standing in the text. */
const DRAWN = '√()|⌊⌋';

function italic(letter: string): string {
  if (letter === 'h') return PLANCK;
  const row = ITALIC.find(({ from, to }) => letter >= from && letter <= to);
  return row ? String.fromCodePoint(row.at + letter.charCodeAt(0) - row.from.charCodeAt(0)) : '';
}

/** Every sign that the formulas of a page are drawn with. */
export function mathSigns({ markup }: Html): string {
  const formulas = [...markup.matchAll(/<math[\s\S]*?<\/math>/g)].map(([formula]) => formula);
  const signs = new Set(formulas.join('').replaceAll(/<[^>]+>/g, ''));
  return [...signs, ...[...signs].map(italic)].join('') + DRAWN;
}
