import type { PDFDict } from 'pdf-lib';
import { get, listOf } from '../objects.ts';
import { type Defect, type Draft, name } from './draft.ts';

/** Draws one more thing at the end of the page. */
const add = (operators: string) => (draft: Draft) => draft.draw((content) => `${content} ${operators}`);

/** Draws as an artefact, which every check but that of the operator itself allows. */
const addArtefact = (operators: string) => add(`/Artifact BMC ${operators} EMC`);

const FIRST_MARK = /\/(\w+)<<\/MCID 0>>BDC/;

const descendant = (draft: Draft) => draft.having('CIDToGIDMap');
const firstFont = (draft: Draft) => draft.having('DescendantFonts');

/** Says another text of the letter a in the first font, as UTF-16 in hexadecimal; none where none is given. */
const textOfA = (text: string) => (draft: Draft) =>
  draft.rewrite(firstFont(draft), 'ToUnicode', (map) => {
    const own = text === '' ? '' : `<0061> <0061> <${text}>\n`;
    return map.toString('latin1').replace('<0020> <007e> <0020>', `<0020> <0060> <0020>\n${own}<0062> <007e> <0062>`);
  });

export const CONTENT_DEFECTS: readonly Defect[] = [
  { check: 'operators known', spoil: add('xyzzy') },
  { check: 'resources named', spoil: addArtefact('/Unknown gs') },
  { check: 'operators in pairs', what: 'a state kept', spoil: add('q') },
  { check: 'operators in pairs', what: 'a mark ended twice', spoil: add('EMC') },
  { check: 'all content marked', spoil: add('0 0 1 1 re f') },
  {
    check: 'artefacts and tagged content apart',
    what: 'an artefact in tagged content',
    spoil: (draft) => draft.draw((content) => content.replace(FIRST_MARK, '$& /Artifact BMC EMC')),
  },
  {
    check: 'artefacts and tagged content apart',
    what: 'tagged content in an artefact',
    spoil: (draft) =>
      draft.draw((content) => content.replace(/(\/\w+<<\/MCID 0>>BDC[\s\S]*?EMC)/, '/Artifact BMC $1 EMC')),
  },
  { check: 'content is tagged or an artefact', spoil: add('/Span BMC 0 0 1 1 re f EMC') },
  {
    check: 'content identifiers unique',
    spoil: (draft) => draft.draw((content) => `${content} ${FIRST_MARK.exec(content)?.[0]} EMC`),
  },
  {
    check: 'tagged content in the tree, once',
    what: 'content without an element',
    spoil: add('/P<</MCID 9999>>BDC EMC'),
  },
  {
    check: 'tagged content in the tree, once',
    what: 'an element without its content',
    spoil: (draft) => draft.draw((content) => content.replace(FIRST_MARK, '/Artifact BMC')),
  },
  {
    check: 'tags of content are those of their elements',
    spoil: (draft) => draft.draw((content) => content.replace(FIRST_MARK, '/Span<</MCID 0>>BDC')),
  },

  { check: 'output intent', spoil: (draft) => draft.document.catalog.delete(name('OutputIntents')) },
  {
    check: 'colour profile',
    spoil: (draft) => {
      const [intent] = listOf(get(draft.document.catalog, 'OutputIntents'));
      draft.rewrite(intent, 'DestOutputProfile', (profile) => profile.fill('x', 36, 40));
    },
  },
  { check: 'colours that the intent covers', what: 'a colour of four inks', spoil: addArtefact('0 0 0 1 k') },
  {
    check: 'colours that the intent covers',
    what: 'an image of four inks',
    spoil: ({ document: { context } }) =>
      context.register(context.obj({ Type: 'XObject', Subtype: 'Image', ColorSpace: 'DeviceCMYK' })),
  },
  {
    check: 'inks of one name are alike',
    what: 'another tint',
    spoil: ({ document: { context } }) => {
      for (const blue of [0, 0.1])
        context.register(
          context.obj([
            'Separation',
            'Gold',
            'DeviceRGB',
            { FunctionType: 2, N: 1, C0: [1, 1, 1], C1: [0.8, 0.6, blue] },
          ]),
        );
    },
  },
  {
    check: 'inks of one name are alike',
    what: 'another alternate',
    spoil: ({ document: { context } }) => {
      for (const space of ['DeviceRGB', 'DeviceGray'])
        context.register(context.obj(['Separation', 'Gold', space, { FunctionType: 2, N: 1 }]));
    },
  },
  {
    check: 'no transparency',
    spoil: ({ document: { context } }) => context.register(context.obj({ Type: 'ExtGState', ca: 0.5 })),
  },
  {
    check: 'images',
    spoil: ({ document: { context } }) =>
      context.register(context.obj({ Subtype: 'Image', ColorSpace: 'DeviceGray', Interpolate: true })),
  },

  { check: 'font types', spoil: (draft) => draft.set(firstFont(draft), 'Encoding', 'Identity-V') },
  { check: 'fonts embedded', spoil: (draft) => draft.drop(draft.having('FontFile2'), 'FontFile2') },
  { check: 'glyph map', spoil: (draft) => draft.drop(descendant(draft), 'CIDToGIDMap') },
  {
    check: 'glyphs shown are in the font',
    spoil: (draft) =>
      draft.rewrite(descendant(draft), 'CIDToGIDMap', (map) => {
        map.writeUInt16BE(0, 2 * 0x31);
        return map;
      }),
  },
  {
    check: 'glyphs shown are those of their text',
    // Figures are of one width, so that only the sight of them is wrong.
    spoil: (draft) =>
      draft.rewrite(descendant(draft), 'CIDToGIDMap', (map) => {
        map.writeUInt16BE(map.readUInt16BE(2 * 0x32), 2 * 0x31);
        return map;
      }),
  },
  { check: 'text of every glyph', what: 'none', spoil: textOfA('') },
  { check: 'text of every glyph', what: 'in the private area', spoil: textOfA('e000') },
  { check: 'text of every glyph', what: 'at the end of that', spoil: textOfA('f8ff') },
  { check: 'text of every glyph', what: 'in plane 15', spoil: textOfA('db80dc00') },
  { check: 'text of every glyph', what: 'in plane 16', spoil: textOfA('dbffdffd') },
  { check: 'text of every glyph', what: 'that is zero', spoil: textOfA('0000') },
  { check: 'text of every glyph', what: 'that is a byte order mark', spoil: textOfA('feff') },
  { check: 'text of every glyph', what: 'that is one turned round', spoil: textOfA('fffe') },
  {
    check: 'no lists of glyphs',
    what: 'of a composite font',
    spoil: (draft) => {
      const list = draft.document.context.register(draft.document.context.stream(Uint8Array.of(255)));
      (get(descendant(draft), 'FontDescriptor') as PDFDict).set(name('CIDSet'), list);
    },
  },
  {
    check: 'no lists of glyphs',
    what: 'of a simple font',
    spoil: (draft) => draft.set(get(descendant(draft), 'FontDescriptor'), 'CharSet', 'space'),
  },
  {
    check: 'glyph widths',
    spoil: (draft) => {
      draft.set(descendant(draft), 'W', []);
      draft.set(descendant(draft), 'DW', 500);
    },
  },
  { check: 'subset names', spoil: (draft) => draft.set(get(descendant(draft), 'FontDescriptor'), 'FontName', 'Other') },
];
