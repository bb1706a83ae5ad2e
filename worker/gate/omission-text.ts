import type { Omission, TransponderOmission } from '../calc/surveillance/surveillance-result.ts';
import type { Printer } from '../text/print.ts';
import { phrase } from '../words/words.ts';

/** Parts of an altimeter test, inside a sentence. */
const PARTS: Readonly<Record<Omission['figure'], string>> = {
  'scale-error': phrase`scale error`,
  hysteresis: phrase`hysteresis`,
  'after-effect': phrase`after-effect`,
  friction: phrase`friction`,
  'case-leak': phrase`case leak`,
  'barometric-scale': phrase`barometric scale`,
};

const OF_TRANSPONDER: Readonly<Record<TransponderOmission, string>> = {
  'sensitivity-by-mode': phrase`sensitivity in Mode 3/A and in Mode C`,
  diversity: phrase`whether it has diversity`,
  'antenna-isolation': phrase`isolation between its antennas`,
};

/** The part of an altimeter test that is left out, wherever it is. */
export function omittedPart({ figure }: Pick<Omission, 'figure'>, say: Pick<Printer, 'term'>): string {
  return say.term(PARTS[figure]);
}

/** A figure that a transponder test leaves out. */
export function transponderOmission(omission: TransponderOmission, say: Pick<Printer, 'term'>): string {
  return say.term(OF_TRANSPONDER[omission]);
}

/**
 * What an altimeter test leaves out, in words.
 *
 * @example omissionText({ figure: 'friction', at: [1000, 2000], unit: 'ft' }, say)  // 'friction at 1000, 2000 ft'
 */
export function omissionText(omission: Omission, say: Printer): string {
  const part = omittedPart(omission, say);
  const { at, unit } = omission;
  return at.length === 0 ? part : say.words`${part} at ${at.map((value) => say.plain(value, 0)).join(', ')} ${unit}`;
}
