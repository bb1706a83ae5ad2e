import { type Fault, fault } from '../../text/faults.ts';
import { shortName } from '../bytes/short-name.ts';
import { dictionaryOf, isArray, isName, nameOf, type PdfDictionary } from '../pdf-object.ts';
import type { Resolve } from './decode-stream.ts';

const PROGRAMS = ['FontFile', 'FontFile2', 'FontFile3'];
const PLAIN_ENCODINGS = new Set(['WinAnsiEncoding', 'MacRomanEncoding']);

function hasProgram(font: PdfDictionary, resolve: Resolve): boolean {
  const descriptor = dictionaryOf(resolve(font.get('FontDescriptor')));
  return PROGRAMS.some((key) => resolve(descriptor.get(key)) !== null);
}

// Codes of the plain encodings say by themselves which characters they are (ISO 14289-1, 7.21.7).
function saysItsText(font: PdfDictionary, resolve: Resolve): boolean {
  if (resolve(font.get('ToUnicode')) !== null) return true;
  const encoding = resolve(font.get('Encoding'));
  if (isName(encoding)) return PLAIN_ENCODINGS.has(encoding.name);
  const { size } = dictionaryOf(encoding);
  return (
    size > 0 &&
    !dictionaryOf(encoding).has('Differences') &&
    PLAIN_ENCODINGS.has(nameOf(dictionaryOf(encoding).get('BaseEncoding')))
  );
}

/** The name of a font, without the mark of a subset. */
export function fontNameOf(font: PdfDictionary, resolve: Resolve): string {
  return shortName(nameOf(resolve(font.get('BaseFont'))).replace(/^[A-Z]{6}\+/, ''));
}

/** What of a font keeps a file that holds it from PDF/A-3a and PDF/UA-1, in words (ISO 19005-3, 6.2.11; ISO 14289-1, 7.21). */
export function fontObstacles(font: PdfDictionary, resolve: Resolve): Fault[] {
  const subtype = nameOf(resolve(font.get('Subtype')));
  const name = fontNameOf(font, resolve);
  // The lower half of a Type 0 font was looked at with the upper.
  if (subtype.startsWith('CIDFont')) return [];
  const obstacles: Fault[] = [];
  const descendants = resolve(font.get('DescendantFonts'));
  const descendant = dictionaryOf(isArray(descendants) ? resolve(descendants[0]) : null);
  const holder = subtype === 'Type0' ? descendant : font;
  if (subtype !== 'Type3' && !hasProgram(holder, resolve)) obstacles.push(fault('font-not-embedded', { name }));
  if (nameOf(resolve(descendant.get('Subtype'))) === 'CIDFontType2' && resolve(descendant.get('CIDToGIDMap')) === null)
    obstacles.push(fault('font-not-map-characters-glyphs', { name }));
  if (subtype === 'Type0' ? resolve(font.get('ToUnicode')) === null : !saysItsText(font, resolve))
    obstacles.push(fault('font-not-say-text-codes-stand', { name }));
  return obstacles;
}
