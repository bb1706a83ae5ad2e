/** A length as it stands in a content stream: hundredths of a point, finer than any printer. */
export function number(value: number): string {
  return String(Math.round(value * 100) / 100);
}

/** A ratio, such as an element of a matrix, to five places. */
export function ratio(value: number): string {
  return String(Math.round(value * 100_000) / 100_000);
}

const HEX = Array.from({ length: 0x10000 }, (_, code) => code.toString(16).padStart(4, '0'));

/** A text as a hexadecimal string of its code units: glyph codes in a content stream are code points. */
export function hexText(text: string): string {
  let hex = '<';
  for (let i = 0; i < text.length; i++) hex += HEX[text.charCodeAt(i)];
  return `${hex}>`;
}

/** A text string outside content streams: UTF-16 with byte order mark (ISO 32000-1, 7.9.2.2). */
export function textString(text: string): string {
  return `<feff${hexText(text).slice(1)}`;
}
