import { readFileSync } from 'node:fs';

/** A file of `fixtures/attachments`. */
export function attachment(name: string): Uint8Array {
  return new Uint8Array(readFileSync(`${import.meta.dirname}/../../../../fixtures/attachments/${name}`));
}

/** A stream object whose bytes are given as text, one character a byte. */
export function streamOf(content: string, entries = ''): string {
  return `<<${entries}/Length ${content.length}>>stream\n${content}\nendstream`;
}

/** Bytes as text, one character a byte. */
export function latin1(bytes: Uint8Array): string {
  return Buffer.from(bytes).toString('latin1');
}

/** A PDF of objects that are numbered from 1; the first is the catalogue. */
export function pdfOf(objects: readonly string[], trailer = ''): Uint8Array {
  let text = '%PDF-1.7\n';
  const offsets = objects.map((object, i) => {
    const offset = text.length;
    text += `${i + 1} 0 obj\n${object}\nendobj\n`;
    return `${String(offset).padStart(10, '0')} 00000 n \n`;
  });
  const start = text.length;
  text += `xref\n0 ${objects.length + 1}\n0000000000 65535 f \n${offsets.join('')}`;
  text += `trailer\n<</Size ${objects.length + 1}/Root 1 0 R${trailer}>>\nstartxref\n${start}\n%%EOF\n`;
  return new Uint8Array(Buffer.from(text, 'latin1'));
}

export interface OnePage {
  /** Further entries of the catalogue. */
  catalogue?: string;
  /** Further entries of the page. */
  page?: string;
  content?: string;
  /** Entries of the resources, and of the fonts among them. */
  resources?: string;
  fonts?: string;
  /** Objects from number 6 on. */
  objects?: readonly string[];
}

/** A PDF of one page of 400 by 300 points that says “Here” at 50, 250, in a font that is not embedded. */
export function onePage({
  catalogue = '',
  page = '',
  content = '',
  resources = '',
  fonts = '',
  objects = [],
}: OnePage): Uint8Array {
  return pdfOf([
    `<</Type/Catalog/Pages 2 0 R${catalogue}>>`,
    '<</Type/Pages/Kids[3 0 R]/Count 1>>',
    `<</Type/Page/Parent 2 0 R/MediaBox[0 0 400 300]/Contents 4 0 R/Resources<</Font<</F1 5 0 R${fonts}>>${resources}>>${page}>>`,
    streamOf(`BT /F1 20 Tf 50 250 Td (Here) Tj ET\n${content}`),
    '<</Type/Font/Subtype/Type1/BaseFont/Helvetica/Encoding/WinAnsiEncoding>>',
    ...objects,
  ]);
}
