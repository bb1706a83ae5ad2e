/** Altitude code of Mode C replies, in the 100 ft steps of an encoder (Gillham code). */

const STEP_FT = 100;
const MIN_FT = -1200;
const MAX_FT = 126_700;
/** C1 C2 C4 for the five steps of 100 ft within 500 ft, rising; reversed in every other 500 ft. */
const HUNDREDS = [0b001, 0b011, 0b010, 0b110, 0b100] as const;

/** Returns the Gray code of a count. */
const gray = (count: number): number => count ^ (count >> 1);

function fromGray(code: number): number {
  let count = code;
  for (let shift = code >> 1; shift > 0; shift >>= 1) count ^= shift;
  return count;
}

/**
 * Returns the twelve pulses D1 D2 D4 A1 A2 A4 B1 B2 B4 C1 C2 C4 of a pressure altitude, as a number with D1 as its
 * highest bit.
 *
 * @param altitudeFt rounded to the nearest 100 ft
 * @returns undefined if that is below −1,200 ft or above 126,700 ft
 * @source The 1090 MHz Riddle, ch. on Mode A/C
 */
export function altitudeCode(altitudeFt: number): number | undefined {
  const steps = Math.round((altitudeFt - MIN_FT) / STEP_FT);
  if (!(steps >= 0 && steps <= (MAX_FT - MIN_FT) / STEP_FT)) return undefined;
  const fiveHundreds = Math.floor(steps / 5);
  const within = steps % 5;
  const hundreds = HUNDREDS[fiveHundreds % 2 === 0 ? within : 4 - within] ?? 0;
  return (gray(fiveHundreds) << 3) | hundreds;
}

/**
 * Returns the pressure altitude in ft of twelve pulses; undefined if no altitude has that code.
 *
 * @source The 1090 MHz Riddle, ch. on Mode A/C
 */
export function codedAltitudeFt(code: number): number | undefined {
  const place = HUNDREDS.indexOf((code & 0b111) as (typeof HUNDREDS)[number]);
  if (place === -1) return undefined;
  const fiveHundreds = fromGray(code >> 3);
  const within = fiveHundreds % 2 === 0 ? place : 4 - place;
  const altitudeFt = MIN_FT + (fiveHundreds * 5 + within) * STEP_FT;
  return altitudeFt >= MIN_FT && altitudeFt <= MAX_FT ? altitudeFt : undefined;
}
