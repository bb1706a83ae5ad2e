import type { Check } from '../check.ts';
import type { Font } from '../font.ts';
import { get, listOf, nameOf } from '../objects.ts';
import type { PdfFile } from '../pdf-file.ts';

/** Codes that are shown, by the font that they are shown in. */
function shownIn({ pages, fonts }: PdfFile): Map<Font, Set<number>> {
  const shown = new Map<Font, Set<number>>(fonts.map((font) => [font, new Set()]));
  const fontOf = new Map(fonts.map((font) => [font.dict, font]));
  for (const { content } of pages) {
    for (const { font: dict, codes } of content.shown) {
      const font = dict && fontOf.get(dict);
      const known = font && shown.get(font);
      for (const code of codes) known?.add(code);
    }
  }
  return shown;
}

const hex = (code: number): string => code.toString(16).padStart(4, '0');

function everyGlyph(file: PdfFile, defectOf: (font: Font, code: number) => string | undefined): string[] {
  return [...shownIn(file)].flatMap(([font, codes]) =>
    [...codes].flatMap((code) => {
      const defect = defectOf(font, code);
      return defect === undefined ? [] : [`${font.name} <${hex(code)}>: ${defect}`];
    }),
  );
}

// Zero, the byte order marks and the private areas, those of planes 15 and 16 among them, are no text.
const NO_TEXT = /[\0\ufeff\ufffe\ue000-\uf8ff]|[\udb80-\udbff][\udc00-\udfff]/;

export const FONT_CHECKS: readonly Check[] = [
  {
    name: 'font types',
    clause: 'A-3 6.2.11.2, 6.2.11.3',
    defects: ({ fonts }) =>
      fonts
        .filter(
          ({ dict, descendant }) =>
            nameOf(get(dict, 'Subtype')) !== 'Type0' ||
            nameOf(get(dict, 'Encoding')) !== 'Identity-H' ||
            nameOf(get(descendant, 'Subtype')) !== 'CIDFontType2' ||
            listOf(get(dict, 'DescendantFonts')).length !== 1,
        )
        .map(({ name }) => `${name} is no Type 0 font of one TrueType descendant in Identity-H`),
  },
  {
    name: 'fonts embedded',
    clause: 'A-3 6.2.11.4.1, UA-1 7.21.4.1',
    defects: ({ fonts }) => fonts.filter(({ program }) => !program).map(({ name }) => `${name} has no program`),
  },
  {
    name: 'glyph map',
    clause: 'A-3 6.2.11.3.2, UA-1 7.21.3.2',
    defects: ({ fonts }) => fonts.filter(({ glyphOf }) => !glyphOf).map(({ name }) => `${name} has no CIDToGIDMap`),
  },
  {
    name: 'glyphs shown are in the font',
    clause: 'A-3 6.2.11.4.1, 6.2.11.8',
    defects: (file) =>
      everyGlyph(file, ({ glyphOf, program }, code) => {
        if (!glyphOf || !program) return undefined;
        const glyph = glyphOf(code);
        return glyph > 0 && glyph < program.glyphs ? undefined : `glyph ${glyph} of ${program.glyphs}`;
      }),
  },
  {
    name: 'glyphs shown are those of their text',
    clause: 'A-3 6.2.11.7.2',
    defects: (file) =>
      everyGlyph(file, ({ glyphOf, program, textOf }, code) => {
        const text = textOf(code);
        if (!glyphOf || !program || !text || NO_TEXT.test(text) || glyphOf(code) === 0) return undefined;
        const glyph = program.glyphFor(text.codePointAt(0) ?? 0);
        return glyph === glyphOf(code) ? undefined : `glyph ${glyphOf(code)}, but ${text} is glyph ${glyph}`;
      }),
  },
  {
    name: 'text of every glyph',
    clause: 'A-3 6.2.11.7.2, UA-1 7.21.7',
    defects: (file) =>
      everyGlyph(file, ({ textOf }, code) => {
        const text = textOf(code);
        return text && !NO_TEXT.test(text) ? undefined : 'no text';
      }),
  },
  {
    name: 'no lists of glyphs',
    clause: 'A-3 6.2.11.4.2, UA-1 7.21.4.2, stricter',
    defects: ({ objects }) =>
      objects
        .filter((object) => get(object, 'FontName') !== undefined)
        .flatMap((object) => ['CIDSet', 'CharSet'].filter((key) => get(object, key) !== undefined))
        .map((key) => `a font descriptor has ${key}`),
  },
  {
    name: 'glyph widths',
    clause: 'A-3 6.2.11.5, UA-1 7.21.5',
    defects: (file) =>
      everyGlyph(file, ({ glyphOf, program, widthOf }, code) => {
        if (!glyphOf || !program || glyphOf(code) === 0) return undefined;
        const [said, is] = [widthOf(code), program.advanceOf(glyphOf(code))];
        return Math.abs(said - is) <= 1 ? undefined : `${said} wide, but ${is} in the program`;
      }),
  },
  {
    name: 'subset names',
    clause: 'ISO 32000-1 9.6.4',
    defects: ({ fonts }) =>
      fonts
        .filter(({ name, descendant }) => {
          const names = [nameOf(get(descendant, 'BaseFont')), nameOf(get(descendant, 'FontDescriptor', 'FontName'))];
          return !/^[A-Z]{6}\+/.test(name) || names.some((other) => other !== name);
        })
        .map(({ name }) => `${name} has no subset tag, or other names within`),
  },
];
