import { plainNumber } from './serial.ts';

const hasDigit = (text: string | undefined): boolean => text !== undefined && /\d/.test(text);

/** Whether a text is a number: “none” and a dash have no digit. */
export function isNumbered(number: string | undefined): number is string {
  return hasDigit(number);
}

/**
 * Whether a text names a number, alone or among others: “BP-1 and BP-2” names BP-1, but not BP-11.
 */
export function namesNumber(text: string, number: string): boolean {
  const [within, sought] = [plainNumber(text), plainNumber(number)];
  for (let at = within.indexOf(sought); at >= 0; at = within.indexOf(sought, at + 1)) {
    const [before, after] = [within[at - 1], within[at + sought.length]];
    const isCut = (hasDigit(before) && hasDigit(sought[0])) || (hasDigit(after) && hasDigit(sought.at(-1)));
    if (!isCut) return true;
  }
  return false;
}
