/**
 * Limits in words.
 *
 * @example rangeText({ least: 1087, most: 1093 })  // '1087 to 1093'
 */
export function rangeText({ least, most }: { least?: number | undefined; most?: number | undefined }): string {
  if (least !== undefined && most !== undefined) return `${least} to ${most}`;
  if (least !== undefined) return `not below ${least}`;
  return most === undefined ? 'none' : `not above ${most}`;
}
