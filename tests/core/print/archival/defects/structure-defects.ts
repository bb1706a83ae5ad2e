import { PDFArray, PDFDict, PDFString } from 'pdf-lib';
import { get, getUnfollowed, listOf, nameOf } from '../objects.ts';
import { type Defect, type Draft, name } from './draft.ts';

// An element of others alone: its role stands in no content stream.
const holdsElements = (element: PDFDict): boolean =>
  listOf(get(element, 'K')).length > 0 &&
  listOf(get(element, 'K')).every((kid) => kid instanceof PDFDict && nameOf(get(kid, 'S')));

const annotation = (draft: Draft) => draft.having('Rect');
const root = ({ document }: Draft) => get(document.catalog, 'StructTreeRoot');

function swapParents(draft: Draft): void {
  const [, parents] = listOf(get(root(draft), 'ParentTree', 'Nums'));
  if (!(parents instanceof PDFArray)) throw new Error('Cannot spoil the file: no parent tree');
  const [first, second] = [parents.get(0), parents.get(1)];
  parents.set(0, second);
  parents.set(1, first);
}

export const STRUCTURE_DEFECTS: readonly Defect[] = [
  { check: 'marked', what: 'Marked missing', spoil: (draft) => draft.drop(draft.document.catalog, 'MarkInfo') },
  {
    check: 'marked',
    what: 'suspects',
    spoil: (draft) => draft.set(get(draft.document.catalog, 'MarkInfo'), 'Suspects', true),
  },
  { check: 'structure tree', spoil: (draft) => draft.set(root(draft), 'Type', 'Other') },
  {
    check: 'structure types',
    what: 'a type of nobody',
    spoil: (draft) => draft.set(draft.element('Sect', holdsElements), 'S', 'Fancy'),
  },
  {
    check: 'structure types',
    what: 'a standard type mapped',
    spoil: (draft) => draft.set(root(draft), 'RoleMap', { Sect: 'Part' }),
  },
  {
    check: 'structure parents',
    spoil: (draft) => draft.element('L').set(name('P'), getUnfollowed(draft.element('Table'), 'P') ?? name('none')),
  },
  { check: 'parent tree', what: 'two entries swapped', spoil: swapParents },
  { check: 'parent tree', what: 'a next key in use', spoil: (draft) => draft.set(root(draft), 'ParentTreeNextKey', 0) },
  {
    check: 'language',
    what: 'none',
    spoil: (draft) => draft.drop(draft.document.catalog, 'Lang'),
  },
  {
    check: 'language',
    what: 'no tag',
    spoil: (draft) => draft.set(draft.element('P'), 'Lang', PDFString.of('plain English')),
  },
  {
    check: 'headings',
    spoil: (draft) => {
      draft.set(draft.element('H2'), 'S', 'H4');
      draft.draw((content) => content.replace('/H2<<', '/H4<<'));
    },
  },
  { check: 'figure alternatives', spoil: (draft) => draft.drop(draft.element('Figure'), 'Alt') },
  { check: 'figure boxes', spoil: (draft) => draft.drop(draft.element('Figure'), 'A') },
  { check: 'notes', spoil: (draft) => draft.graft(draft.element('Sect'), 'Note') },
  { check: 'lists hold items', spoil: (draft) => draft.graft(draft.element('L'), 'P') },
  { check: 'list items hold label and body', spoil: (draft) => draft.graft(draft.element('LI'), 'LBody') },
  { check: 'labels and bodies in items', spoil: (draft) => draft.graft(draft.element('Sect'), 'LBody') },

  { check: 'parts of tables', what: 'a paragraph in a row', spoil: (draft) => draft.graft(draft.element('TR'), 'P') },
  { check: 'parts of tables', what: 'a second head', spoil: (draft) => draft.graft(draft.element('Table'), 'THead') },
  { check: 'table heads', spoil: (draft) => draft.drop(draft.element('TH'), 'A') },
  {
    check: 'tables have heads',
    spoil: (draft) => {
      const { context } = draft.document;
      const table = draft.graft(draft.element('Sect'), 'Table');
      const row = context.register(context.obj({ S: 'TR', P: table }));
      const cell = context.register(context.obj({ S: 'TD', P: row }));
      draft.set(context.lookup(row), 'K', [cell]);
      draft.set(context.lookup(table), 'K', [row]);
    },
  },
  {
    check: 'table rows equally wide',
    spoil: (draft) => draft.set(draft.element('TD'), 'A', { O: 'Table', ColSpan: 2 }),
  },

  {
    check: 'title shown',
    spoil: (draft) => draft.set(get(draft.document.catalog, 'ViewerPreferences'), 'DisplayDocTitle', false),
  },
  { check: 'tab order', spoil: (draft) => draft.set(draft.document.getPage(1).node, 'Tabs', 'R') },
  { check: 'page keys', spoil: (draft) => draft.drop(draft.document.getPage(1).node, 'StructParents') },
  { check: 'annotation types', spoil: (draft) => draft.set(annotation(draft), 'Subtype', 'Text') },
  { check: 'annotation flags', what: 'hidden', spoil: (draft) => draft.set(annotation(draft), 'F', 6) },
  { check: 'annotation flags', what: 'not printed', spoil: (draft) => draft.drop(annotation(draft), 'F') },
  { check: 'links described', spoil: (draft) => draft.drop(annotation(draft), 'Contents') },
  { check: 'links in the tree', spoil: (draft) => draft.set(annotation(draft), 'StructParent', 999) },
  { check: 'links lead to a page', spoil: (draft) => draft.set(annotation(draft), 'Dest', [null, 'Fit']) },
  {
    check: 'no actions',
    what: 'a script on opening',
    spoil: (draft) => draft.set(draft.document.catalog, 'OpenAction', { S: 'Named', N: 'Print' }),
  },
  {
    check: 'no actions',
    what: 'a trigger on a page',
    spoil: (draft) => draft.set(draft.document.getPage(0).node, 'AA', {}),
  },
  {
    check: 'no alternates, layers or requirements',
    spoil: (draft) => draft.set(draft.document.catalog, 'OCProperties', {}),
  },
  { check: 'bookmarks', what: 'none', spoil: (draft) => draft.drop(draft.document.catalog, 'Outlines') },
  {
    check: 'bookmarks',
    what: 'one without a place',
    spoil: (draft) => draft.drop(get(draft.document.catalog, 'Outlines', 'First'), 'Dest'),
  },
  { check: 'page labels', spoil: (draft) => draft.drop(draft.document.catalog, 'PageLabels') },
];
