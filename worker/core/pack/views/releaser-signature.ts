import type { PackContext } from '../context.ts';
import { type SignatureView, signatureOf } from '../people.ts';

/**
 * The field of the releasing person under what follows from the release. A draft has none: nobody has put their name to it.
 *
 * @param heading what that person answers for
 * @param withTime whether the time of day stands beside the day
 */
export function releaserSignature(
  { visit, released, fmt }: PackContext,
  heading: string,
  withTime = false,
): SignatureView[] {
  if (!released) return [];
  const { releasedAt } = released;
  return [signatureOf(visit, released.release.by, heading, withTime ? fmt.timestamp(releasedAt) : fmt.day(releasedAt))];
}
