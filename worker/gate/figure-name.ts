import type { Figure, Limited } from '../calc/surveillance/surveillance-result.ts';
import type { Printer } from '../text/print.ts';
import { phrase } from '../words/words.ts';

/** Figures of the tests, as a row of a table names them. */
const FIGURE_NAMES: Readonly<Record<Figure, string>> = {
  'scale-error': phrase`Scale error`,
  'hysteresis-50': phrase`Hysteresis at 50 %`,
  'hysteresis-40': phrase`Hysteresis at 40 %`,
  'after-effect': phrase`After-effect`,
  friction: phrase`Friction`,
  'case-leak': phrase`Case leak`,
  'barometric-scale': phrase`Barometric scale`,
  'raised-above-aerodrome': phrase`Raised above the aerodrome`,
  'loss-in-one-minute': phrase`Loss in one minute`,
  'reply-frequency': phrase`Reply frequency`,
  'output-power': phrase`Peak output power`,
  sensitivity: phrase`Sensitivity`,
  'sensitivity-difference': phrase`Mode 3/A less Mode C sensitivity`,
  'sidelobe-replies': phrase`Replies with P2 equal to P1`,
  'wanted-replies': phrase`Replies with P2 9 dB down`,
  'antenna-isolation': phrase`Isolation of the other antenna`,
};

/** Figures of the static system inside a sentence, where they begin with a small letter. */
const IN_SENTENCE: Readonly<Partial<Record<Figure, string>>> = {
  'raised-above-aerodrome': phrase`raised above the aerodrome`,
  'loss-in-one-minute': phrase`loss in one minute`,
};

/** The name of a figure inside a sentence. */
export function figureInSentence(figure: Figure, say: Pick<Printer, 'term'>): string {
  return say.term(IN_SENTENCE[figure] ?? FIGURE_NAMES[figure]);
}

/** The name of a figure, wherever it was read. */
export function nameOfFigure(figure: Figure, say: Pick<Printer, 'term'>): string {
  return say.term(FIGURE_NAMES[figure]);
}

/**
 * A figure by name and, where there are several, by the place at which it was read.
 *
 * @example figureName({ figure: 'friction', at: { value: 5000, unit: 'ft' } }, say)  // 'Friction at 5000 ft'
 */
export function figureName({ figure, at }: Pick<Limited, 'figure' | 'at'>, say: Printer): string {
  const name = nameOfFigure(figure, say);
  return at ? say.words`${name} at ${say.plain(at.value, Number.isInteger(at.value) ? 0 : 1)} ${at.unit}` : name;
}
