/** No display shows more. */
const MOST_SHOWN = 1e6;
const MOST_DECIMALS = 3;

/**
 * Returns the numbers that follow from a displayed number if two neighbouring digits change places.
 *
 * @param step one step of the display, which gives its decimals
 * @returns by the place of the first digit, counted from the left
 * @source common practice, no source: the slip changes a number by nine times a digit
 * @example swappedDigits(121.4, 0.1)  // 211.4, 112.4, 124.1
 */
export function swappedDigits(value: number, step: number): Map<number, number> {
  if (!(Math.abs(value) < MOST_SHOWN)) return new Map();
  const decimals = step > 0 ? Math.min(MOST_DECIMALS, Math.max(0, Math.ceil(-Math.log10(step) - 1e-9))) : MOST_DECIMALS;
  const text = Math.abs(value).toFixed(decimals);
  const places = [...text].flatMap((character, index) => (character === '.' ? [] : [index]));
  const swapped = new Map<number, number>();
  for (const [order, place] of places.entries()) {
    const next = places[order + 1];
    if (next === undefined || text[place] === text[next]) continue;
    const digits = [...text];
    [digits[place], digits[next]] = [digits[next] ?? '', digits[place] ?? ''];
    swapped.set(order, Math.sign(value) * Number(digits.join('')));
  }
  return swapped;
}

/** Ratios of a decimal point at the wrong place. */
const POINT_RATIOS = [0.1, 10] as const;

/**
 * Returns the numbers that may have been meant by a displayed number: two digits swapped, or its decimal point moved.
 *
 * @param step one step of the display
 * @returns by the kind of slip, so that the same slip of several readings has the same key
 * @source common practice, no source
 */
export function slipsOf(value: number, step: number): Map<string, number> {
  return new Map([
    ...[...swappedDigits(value, step)].map(([place, instead]) => [`d${place}`, instead] as const),
    ...POINT_RATIOS.map((ratio) => [`p${ratio}`, value * ratio] as const),
  ]);
}

/** Ratios of a slip of the unit or the sign of an arm. */
export const ARM_RATIOS = [-1, 25.4, 1 / 25.4, 2.54, 1 / 2.54, 10, 0.1, 1000, 0.001] as const;
/** Ratios of pounds and kilograms. */
export const MASS_RATIOS = [0.45359237, 1 / 0.45359237] as const;
