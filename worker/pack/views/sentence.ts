/** Text of the record with a full stop, where it has none. */
export function sentence(text: string): string {
  return /[.!?]$/.test(text) ? text : `${text}.`;
}
