/**
 * Returns a text with exactly one full stop at its end, typed or not.
 *
 * @example sentence('Wrong meter read.')  // 'Wrong meter read.'
 */
export function sentence(text: string): string {
  const typed = text.trimEnd();
  return /[.!?…]$/.test(typed) ? typed : `${typed}.`;
}
