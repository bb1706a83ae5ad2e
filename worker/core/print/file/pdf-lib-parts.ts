/**
 * Parts of pdf-lib that write a file, each from its own module: its root adds forms, fonts and pictures, 390 kB of
 * them. Bundles use this file for `#pdf-lib` (see `imports` of package.json); Node uses the root.
 */
export { default as PDFHeader } from 'pdf-lib/es/core/document/PDFHeader';
export { default as PDFTrailer } from 'pdf-lib/es/core/document/PDFTrailer';
export { default as PDFDict } from 'pdf-lib/es/core/objects/PDFDict';
export { default as PDFName } from 'pdf-lib/es/core/objects/PDFName';
export { default as PDFNumber } from 'pdf-lib/es/core/objects/PDFNumber';
export { default as PDFObject } from 'pdf-lib/es/core/objects/PDFObject';
export { default as PDFRawStream } from 'pdf-lib/es/core/objects/PDFRawStream';
export { default as PDFRef } from 'pdf-lib/es/core/objects/PDFRef';
export { default as PDFStream } from 'pdf-lib/es/core/objects/PDFStream';
export { default as PDFContext } from 'pdf-lib/es/core/PDFContext';
export { default as PDFCrossRefStream } from 'pdf-lib/es/core/structures/PDFCrossRefStream';
