/** Entries that describe how a form, pattern or image is drawn. What says where it came from or belonged is left behind. */
export const FORM = ['Type', 'Subtype', 'FormType', 'BBox', 'Matrix', 'Group'];
export const PATTERN = ['Type', 'PatternType', 'PaintType', 'TilingType', 'BBox', 'XStep', 'YStep', 'Matrix'];
export const IMAGE = [
  ...['Type', 'Subtype', 'Width', 'Height', 'ColorSpace', 'BitsPerComponent', 'Intent', 'ImageMask', 'Mask', 'Decode'],
  ...['SMask', 'Matte'],
];

/** Parts of a file's frame that a careless entry could lead to, and what speaks of a file rather than shows it. */
export const FRAME = new Set([
  'Catalog',
  'Pages',
  'Page',
  'StructTreeRoot',
  'StructElem',
  'Annot',
  'OCG',
  'OCMD',
  'Outlines',
  'Metadata',
  'Filespec',
]);

/** Entries that any object may have: descriptions, data of the program that wrote it, small pictures of it, files that belong to it. */
export const NEVER = [
  'Metadata',
  'PieceInfo',
  'LastModified',
  'Thumb',
  'AF',
  'OC',
  'Parent',
  'StructParent',
  'StructParents',
];

/** Lists of the glyphs in a font. Parts of PDF/A ask for different ones under the same name, and none asks for any. */
export const GLYPH_LISTS = ['CIDSet', 'CharSet'];

/** ISO 32000-1, 11.3.5. */
export const BLEND_MODES = new Set(
  'Normal Compatible Multiply Screen Overlay Darken Lighten ColorDodge ColorBurn HardLight SoftLight Difference Exclusion Hue Saturation Color Luminosity'.split(
    ' ',
  ),
);
