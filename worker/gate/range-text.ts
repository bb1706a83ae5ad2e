/**
 * Limits in words.
 *
 * @example rangeText({ least: 1087, most: 1093 })  // '1087 to 1093'
 */
export function rangeText({ least, most }: { least?: number | undefined; most?: number | undefined }): string {
  const text = (value: number): string => String(value).replace('-', '\u2212');
  if (least !== undefined && most !== undefined) return `${text(least)} to ${text(most)}`;
  if (least !== undefined) return `not below ${text(least)}`;
  return most === undefined ? 'none' : `not above ${text(most)}`;
}
