import { isAtLeast } from '../calc/numbers/limit-met.ts';
import type { LimitCheck } from '../calc/surveillance/surveillance-result.ts';
import * as figure from '../text/figure.ts';
import * as m from '../text/generated/messages.ts';
import { said, type Value } from '../text/message.ts';

/**
 * Limits in words.
 *
 * @example rangeText({ least: 1087, most: 1093 })  // '1087 to 1093'
 */
export function rangeText({ least, most }: { least?: number | undefined; most?: number | undefined }): Value {
  const text = figure.asIs;
  if (least !== undefined && most !== undefined) return said(m.to, { text: text(least), text2: text(most) });
  if (least !== undefined) return said(m.rangeText_notBelow, { text: text(least) });
  return most === undefined ? said(m.none) : said(m.rangeText_notAbove, { text: text(most) });
}

/** A value and its limits. */
type Limited = Pick<LimitCheck, 'value' | 'least' | 'most'>;

/** Returns the limit that a value exceeds. */
export function brokenLimit({ value, most = value, ...lower }: Limited): number {
  return isAtLeast(value, lower.least ?? value) ? most : (lower.least ?? most);
}

/** A value outside its limits, with enough digits to show that it is. */
export function valueOutside(of: Limited, decimals: number): Value {
  return figure.plainApart(of.value, brokenLimit(of), decimals)[0];
}

/** An arm outside its range and both limits, with enough digits to show the excess. */
export function armOutside(
  armMm: number,
  { forwardMm, aftMm }: { forwardMm: number; aftMm: number },
): { arm: Value; forward: Value; aft: Value } {
  const isForward = !isAtLeast(armMm, forwardMm);
  const [arm, broken] = figure.apart('arm', armMm, isForward ? forwardMm : aftMm);
  return {
    arm,
    forward: isForward ? broken : figure.measure('arm', forwardMm),
    aft: isForward ? figure.measure('arm', aftMm) : broken,
  };
}
