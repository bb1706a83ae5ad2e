// An entry that is not readable means unknown, not zero. Fields are text: fields for numbers drop a comma that the
// browser does not expect, and 8,5 becomes 85. A mark before three digits is refused if it may separate thousands.

/**
 * Parses a number as people type it, with a point or a comma; undefined if it is not a number or is ambiguous: `1,232`
 * is less than two or more than a thousand.
 *
 * @param sure separator that marks decimals even before three digits
 */
export function typedNumber(text: string, sure: '.' | '' = ''): number | undefined {
  const [, sign = '', whole = '', mark = '', decimals = ''] =
    /^([+-]?)(\d*)(?:([.,])(\d+))?$/.exec(text.trim().replace('−', '-')) ?? [];
  if (whole === '' && decimals === '') return undefined;
  const isUnclear = decimals.length === 3 && Number(whole) !== 0 && mark !== sure;
  return isUnclear ? undefined : Number(`${sign}${whole || 0}.${decimals || 0}`);
}
