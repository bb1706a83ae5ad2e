import type { Printer } from '../units/print.ts';

/**
 * Limits in words.
 *
 * @example rangeText({ least: 1087, most: 1093 }, say)  // '1087 to 1093'
 */
export function rangeText(
  { least, most }: { least?: number | undefined; most?: number | undefined },
  say: Printer,
): string {
  const text = say.asIs;
  if (least !== undefined && most !== undefined) return say.words`${text(least)} to ${text(most)}`;
  if (least !== undefined) return say.words`not below ${text(least)}`;
  return most === undefined ? say.words`none` : say.words`not above ${text(most)}`;
}
