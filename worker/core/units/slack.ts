/** Sums of decimal figures in binary are off by some parts in 10¹⁵; this is far above that, and far below anything measured. */
const SHARE = 1e-9;

/**
 * Returns the tolerance within which two figures count as equal.
 *
 * @source common practice, no source
 */
export function slackOf(value: number): number {
  return SHARE * Math.max(1, Math.abs(value));
}
