import type { Formatter } from '../../text/formatter.ts';
import { decimalsStated } from '../../units/rounding.ts';

/**
 * Returns an angle in degrees with its sign and with the digits that it was read or stated with, min. one decimal.
 *
 * @example angleText(fmt, 0.25)  // '+0.25'
 */
export function angleText(fmt: Formatter, angleDeg: number): string {
  return fmt.signed(angleDeg, decimalsStated(angleDeg, 1));
}
