/** Letters and digits of a number, in capitals, without spaces. */
export const plainNumber = (number: string): string => number.replace(/\s+/g, '').toUpperCase();

/** Whether two serial numbers are the same once spaces and letter case are left out. */
export function sameSerial(a: string, b: string): boolean {
  return plainNumber(a) === plainNumber(b);
}
