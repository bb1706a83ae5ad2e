import { slackOf } from '../../units/slack.ts';

/**
 * Whether a value is at or below a limit. A limit met exactly is met, whatever binary sums make of it: 0.2 + 2.2 + 0.6 is
 * at most 3. False for what is no number. Every comparison of something computed with a limit is one of these two.
 *
 * @source common practice, no source: the limit itself is within
 */
export function isAtMost(value: number, limit: number): boolean {
  return value <= limit + slackOf(limit);
}

/**
 * Whether a value is at or above a limit; the same the other way round.
 *
 * @source common practice, no source: the limit itself is within
 */
export function isAtLeast(value: number, limit: number): boolean {
  return value >= limit - slackOf(limit);
}
