/** One face as written by build.ts. Advances are in the order of CHARACTERS; lengths are in thousandths of the type size. */
export interface BuiltFace {
  name: string;
  /** The TrueType subset, deflated, in base64. */
  program: string;
  programBytes: number;
  /** Character to glyph as a CIDToGIDMap stream (ISO 32000-1, 9.7.4.2), deflated, in base64. */
  glyphMap: string;
  advances: readonly number[];
  /** Kerning, three numbers per pair: left and right code point, and the addition to the advance of the left one. */
  kerning: readonly number[];
  ascent: number;
  descent: number;
  capHeight: number;
  italicAngleDeg: number;
  box: readonly [xMin: number, yMin: number, xMax: number, yMax: number];
}
