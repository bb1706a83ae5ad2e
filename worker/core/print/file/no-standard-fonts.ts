/**
 * Replaces `@pdf-lib/standard-fonts` in bundles, of which pdf-lib uses only the names: packs embed their own fonts, and
 * the metrics of fourteen others are 150 kB.
 */
export const FontNames = {};
export const Font = {};
export const Encodings = {};
