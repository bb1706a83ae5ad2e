import { isAtLeast } from '../calc/limit-met.ts';
import type { Printer } from '../text/print.ts';

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

/** An arm outside its range, and the two ends of the range, with as many digits as show that it is. */
export function armOutside(
  armMm: number,
  { forwardMm, aftMm }: { forwardMm: number; aftMm: number },
  say: Printer,
): { arm: string; forward: string; aft: string } {
  const isForward = !isAtLeast(armMm, forwardMm);
  const [arm, broken] = say.apart('arm', armMm, isForward ? forwardMm : aftMm);
  return {
    arm,
    forward: isForward ? broken : say.measure('arm', forwardMm),
    aft: isForward ? say.measure('arm', aftMm) : broken,
  };
}
