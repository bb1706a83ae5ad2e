import { slackOf } from '../../units/slack.ts';

/**
 * Whether a value is at or below a limit, with tolerance for binary sums: 0.2 + 2.2 + 0.6 is within 3. False for NaN.
 * Every comparison of a computed value with a limit is one of these two.
 *
 * @source common practice, no source: the limit itself is within
 */
export function isAtMost(value: number, limit: number): boolean {
  return value <= limit + slackOf(limit);
}

/**
 * Whether a value is at or above a limit, with the same tolerance.
 *
 * @source common practice, no source: the limit itself is within
 */
export function isAtLeast(value: number, limit: number): boolean {
  return value >= limit - slackOf(limit);
}
