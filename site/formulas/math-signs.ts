import type { Html } from '../../worker/local/markup/html.ts';

/** Ranges of mathematical letters, with which browsers draw a variable of one letter. */
const ITALIC = [
  { from: 'A', to: 'Z', at: 0x1d434 },
  { from: 'a', to: 'z', at: 0x1d44e },
  { from: 'α', to: 'ω', at: 0x1d6fc },
] as const;

/** Code point of the italic h, which was encoded before the others. */
const PLANCK = 'ℎ';

/** Signs that are drawn but are not in the text. */
const DRAWN = '√()|⌊⌋';

function italic(letter: string): string {
  if (letter === 'h') return PLANCK;
  const row = ITALIC.find(({ from, to }) => letter >= from && letter <= to);
  return row ? String.fromCodePoint(row.at + letter.charCodeAt(0) - row.from.charCodeAt(0)) : '';
}

/** Returns every sign that the formulas of a page are drawn with. */
export function mathSigns({ markup }: Html): string {
  const formulas = [...markup.matchAll(/<math[\s\S]*?<\/math>/g)].map(([formula]) => formula);
  const signs = new Set(formulas.join('').replaceAll(/<[^>]+>/g, ''));
  return [...signs, ...[...signs].map(italic)].join('') + DRAWN;
}
