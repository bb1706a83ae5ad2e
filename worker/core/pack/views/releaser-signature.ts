import type { PackContext } from '../context.ts';
import { type SignatureView, signatureOf } from '../people.ts';

/**
 * Returns the signature field of the releasing person, for statements that follow from the release. A draft has none:
 * nobody has signed it.
 *
 * @param heading responsibility of that person
 * @param withTime print the time of day with the date
 */
export function releaserSignature(
  { visit, released, fmt }: PackContext,
  heading: string,
  withTime = false,
): SignatureView[] {
  if (!released) return [];
  const { releasedAt } = released;
  return [
    signatureOf(
      { visit, fmt },
      released.release.by,
      heading,
      withTime ? fmt.timestamp(releasedAt) : fmt.day(releasedAt),
    ),
  ];
}
