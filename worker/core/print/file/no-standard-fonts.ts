/**
 * In bundles in the place of `@pdf-lib/standard-fonts`, of which pdf-lib asks for the names alone: packs embed their own fonts, and the
 * metrics of fourteen others are 150 kB.
 */
export const FontNames = {};
export const Font = {};
export const Encodings = {};
