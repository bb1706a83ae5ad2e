import { dictionaryOf, isArray, isName, isStream, type PdfDictionary, type PdfStream } from '../pdf-object.ts';
import type { PdfFile } from './pdf-file.ts';

// The text that is shown is read from the content, by the encoding of its fonts: a ToUnicode map may lack a letter
// or map it to a private area. Tables outside the file and glyph names are not trusted. Such documents cost the pack
// its PDF/A claim, which is always correct.

/** The drawings of a font of drawn letters by their codes (ISO 32000-1, 9.6.5). */
export function drawnLetters(font: PdfDictionary, { resolve, budget }: PdfFile): ReadonlyMap<number, PdfStream> {
  const letters = new Map<number, PdfStream>();
  const drawings = dictionaryOf(resolve(font.get('CharProcs')));
  const differences = resolve(dictionaryOf(resolve(font.get('Encoding'))).get('Differences'));
  const items = isArray(differences) ? differences : [];
  // Many fonts may name one list.
  budget.spend('objects', items.length);
  let code = 0;
  for (const each of items) {
    const item = resolve(each);
    if (typeof item === 'number') code = item;
    else if (isName(item)) {
      const drawing = resolve(drawings.get(item.name));
      if (isStream(drawing)) letters.set(code, drawing);
      code += 1;
    }
  }
  return letters;
}
