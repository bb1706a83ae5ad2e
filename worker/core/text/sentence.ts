/**
 * A text with one full stop behind it: people end what they type with one, or do not.
 *
 * @example sentence('Wrong meter read.')  // 'Wrong meter read.'
 */
export function sentence(text: string): string {
  const typed = text.trimEnd();
  return /[.!?…]$/.test(typed) ? typed : `${typed}.`;
}
