/** Letters and digits of a number, in capitals, without spaces. */
const plain = (number: string): string => number.replace(/\s+/g, '').toUpperCase();

const isDigit = (character: string | undefined): boolean => character !== undefined && /\d/.test(character);

/** Whether a text is a number: “none” and a dash have no digit. */
export function isNumbered(number: string | undefined): number is string {
  return number !== undefined && isNumbering.test(number);
}

const isNumbering = /\d/;

/**
 * Whether a text names a number, alone or among others: “BP-1 and BP-2” names BP-1, but not BP-11.
 */
export function namesNumber(text: string, number: string): boolean {
  const [within, sought] = [plain(text), plain(number)];
  for (let at = within.indexOf(sought); at >= 0; at = within.indexOf(sought, at + 1)) {
    const [before, after] = [within[at - 1], within[at + sought.length]];
    const isCut = (isDigit(before) && isDigit(sought[0])) || (isDigit(after) && isDigit(sought.at(-1)));
    if (!isCut) return true;
  }
  return false;
}
