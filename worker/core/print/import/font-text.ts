import { dictionaryOf, isArray, isName, isStream, nameOf, type PdfDictionary } from '../pdf-object.ts';
import { readCodeMap } from './code-map.ts';
import type { PdfFile } from './pdf-file.ts';

/** The text of a code of a font; undefined where the font does not say it. */
export type TextOfCode = (code: number) => string | undefined;

const PLAIN_ENCODINGS = new Set(['WinAnsiEncoding', 'MacRomanEncoding']);

// Codes that the plain encodings give no character (ISO 32000-1, annex D.2): of some only one, which is seldom enough to leave both.
const NO_CHARACTER = new Set([0x7f, 0x81, 0x8d, 0x8f, 0x90, 0x9d]);

// What a code of a plain encoding stands for matters to nobody here, only that it stands for a character.
const SOME_CHARACTER = 'x';

function encodingOf(
  font: PdfDictionary,
  { resolve, budget }: PdfFile,
): { base: string; differing: ReadonlySet<number> } {
  const encoding = resolve(font.get('Encoding'));
  if (isName(encoding)) return { base: encoding.name, differing: new Set() };
  const entries = dictionaryOf(encoding);
  const differences = resolve(entries.get('Differences'));
  const differing = new Set<number>();
  const items = isArray(differences) ? differences : [];
  // Many fonts may name one list.
  budget.spend('objects', items.length);
  let code = 0;
  for (const each of items) {
    const item = resolve(each);
    if (typeof item === 'number') code = item;
    else differing.add(code++);
  }
  return { base: nameOf(resolve(entries.get('BaseEncoding'))), differing };
}

/** How a font says which text its codes stand for (ISO 19005-3, 6.2.11.7.2); null where it says nothing of any. */
export function textOfCode(font: PdfDictionary, file: PdfFile): TextOfCode | null {
  const toUnicode = file.resolve(font.get('ToUnicode'));
  const map = isStream(toUnicode) ? readCodeMap(file.decode(toUnicode), file.budget) : null;
  if (nameOf(file.resolve(font.get('Subtype'))) === 'Type0') return map?.textOf ?? null;
  const { base, differing } = encodingOf(font, file);
  // Codes of the plain encodings say by themselves which characters they are (ISO 14289-1, 7.21.7); names of glyphs are not taken for it.
  const isPlain = PLAIN_ENCODINGS.has(base);
  if (!map && (!isPlain || differing.size > 0)) return null;
  const plain: TextOfCode = (code) =>
    isPlain && code >= 0x20 && !NO_CHARACTER.has(code) && !differing.has(code) ? SOME_CHARACTER : undefined;
  return (code) => map?.textOf(code) ?? plain(code);
}
