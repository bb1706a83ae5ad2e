import type { Check } from '../check.ts';
import { get, isTrue, keysOf, listOf, nameOf, numberOf, numberTree, textOf, unfollowed } from '../objects.ts';
import type { PdfFile } from '../pdf-file.ts';
import type { StructureElement } from '../structure-tree.ts';

// ISO 32000-1, 14.8.4.
const STANDARD = new Set(
  'Document Part Art Sect Div BlockQuote Caption TOC TOCI Index NonStruct Private P H H1 H2 H3 H4 H5 H6 L LI Lbl LBody Table TR TH TD THead TBody TFoot Span Quote Note Reference BibEntry Code Link Annot Ruby RB RT RP Warichu WT WP Figure Formula Form'.split(
    ' ',
  ),
);

const LANGUAGE = /^[a-zA-Z]{1,8}(-[a-zA-Z0-9]{1,8})*$/;

/** A check of each element of some types by itself. */
function onElements(
  name: string,
  clause: string,
  types: RegExp,
  defectOf: (element: StructureElement) => string | undefined,
): Check {
  return {
    name,
    clause,
    defects: ({ elements }) =>
      elements
        .filter(({ type }) => types.test(type))
        .flatMap((element) => {
          const defect = defectOf(element);
          return defect === undefined ? [] : [`${element.type} ${element.reference}: ${defect}`];
        }),
  };
}

/** An attribute of a table, layout or list, whichever owner it stands under (ISO 32000-1, 14.8.5). */
export function attribute({ object }: StructureElement, name: string): ReturnType<typeof get> {
  const attributes = get(object, 'A');
  const owners = listOf(attributes);
  for (const owner of owners.length > 0 ? owners : [attributes]) {
    const value = get(owner, name);
    if (value !== undefined) return value;
  }
  return undefined;
}

function parentTreeDefects({ catalogue, pages, elements, context }: PdfFile): string[] {
  const root = get(catalogue, 'StructTreeRoot');
  const tree = numberTree(get(root, 'ParentTree'));
  const owners = new Map(
    elements.flatMap(({ reference, contents }) =>
      contents.map(({ page, id }): [string, string] => [`${page} #${id}`, reference]),
    ),
  );
  const defects = pages.flatMap(({ reference, dict, content }, page) => {
    const key = numberOf(get(dict, 'StructParents'));
    if (key === undefined) return [];
    const entry = tree.get(key);
    const parents = unfollowed(entry && context.lookup(entry));
    return content.marks.flatMap(({ id }) => {
      const owner = owners.get(`${reference} #${id}`);
      const isRight = id === undefined || owner === undefined || String(parents[id]) === owner;
      return isRight ? [] : [`page ${page + 1}, MCID ${id}: ${String(parents[id])}, not ${owner}`];
    });
  });
  const nextKey = numberOf(get(root, 'ParentTreeNextKey')) ?? 0;
  return [...tree.keys()].every((key) => key < nextKey) ? defects : [...defects, 'ParentTreeNextKey is in use'];
}

function headingDefects({ elements }: PdfFile): string[] {
  let level = 0;
  return elements.flatMap(({ type, reference }) => {
    const next = Number(/^H([1-6])$/.exec(type)?.[1]);
    if (Number.isNaN(next)) return type === 'H' ? [`${reference} has no level`] : [];
    const isNext = next <= level + 1;
    const defect = isNext ? [] : [`${type} ${reference} follows a heading of level ${level}`];
    level = next;
    return defect;
  });
}

const typesOf = (elements: readonly StructureElement[]): string => elements.map(({ type }) => type).join(' ');

export const STRUCTURE_CHECKS: readonly Check[] = [
  {
    name: 'marked',
    clause: 'A-3 6.7.2.2, UA-1 6.2',
    defects: ({ catalogue }) =>
      isTrue(get(catalogue, 'MarkInfo', 'Marked')) && !isTrue(get(catalogue, 'MarkInfo', 'Suspects'))
        ? []
        : ['MarkInfo does not say Marked'],
  },
  {
    name: 'structure tree',
    clause: 'A-3 6.7.3.3',
    defects: ({ catalogue, elements }) => [
      ...(nameOf(get(catalogue, 'StructTreeRoot', 'Type')) === 'StructTreeRoot'
        ? []
        : ['the catalogue names no structure tree']),
      ...(typesOf(elements.filter(({ parent }) => !parent)) === 'Document' ? [] : ['the tree has no single Document']),
    ],
  },
  {
    name: 'structure types',
    clause: 'A-3 6.7.3.4, UA-1 7.1',
    defects: ({ elements, catalogue }) => [
      ...elements.filter(({ type }) => !STANDARD.has(type)).map(({ type }) => `${type} is no standard type`),
      ...keysOf(get(catalogue, 'StructTreeRoot', 'RoleMap'))
        .filter((role) => STANDARD.has(role))
        .map((role) => `${role} is mapped`),
    ],
  },
  {
    name: 'structure parents',
    clause: 'ISO 32000-1 14.7.2',
    defects: ({ elements, catalogue }) =>
      elements
        .filter(({ object, parent }) => get(object, 'P') !== (parent?.object ?? get(catalogue, 'StructTreeRoot')))
        .map(({ type, reference }) => `${type} ${reference} names another parent`),
  },
  { name: 'parent tree', clause: 'ISO 32000-1 14.7.4.4', defects: parentTreeDefects },
  {
    name: 'language',
    clause: 'A-3 6.7.4, UA-1 7.2',
    defects: ({ catalogue, elements }) => {
      const said = elements
        .map(({ object }) => textOf(get(object, 'Lang')))
        .filter((language) => language !== undefined);
      return [textOf(get(catalogue, 'Lang')) ?? '', ...said]
        .filter((language) => !LANGUAGE.test(language))
        .map((language) => `"${language}"`);
    },
  },
  { name: 'headings', clause: 'UA-1 7.4.2', defects: headingDefects },
  onElements('figure alternatives', 'UA-1 7.3', /^(Figure|Formula)$/, ({ object }) =>
    (textOf(get(object, 'Alt')) ?? textOf(get(object, 'ActualText')))?.trim() ? undefined : 'no alternative',
  ),
  onElements('figure boxes', 'ISO 32000-1 14.8.5.4.3', /^Figure$/, (element) =>
    listOf(attribute(element, 'BBox')).length === 4 ? undefined : 'no BBox',
  ),
  onElements('notes', 'UA-1 7.9', /^Note$/, ({ object }) => (textOf(get(object, 'ID')) ? undefined : 'no ID')),
  onElements('lists hold items', 'UA-1 7.2', /^L$/, ({ children }) =>
    /^(Caption )?(LI|L)( (LI|L))*$/.test(typesOf(children)) ? undefined : `holds ${typesOf(children)}`,
  ),
  onElements('list items hold label and body', 'UA-1 7.2, 7.6', /^LI$/, ({ children, parent }) =>
    parent?.type === 'L' && /^(Lbl )?LBody$/.test(typesOf(children))
      ? undefined
      : `holds ${typesOf(children)} in ${parent?.type}`,
  ),
  onElements('labels and bodies in items', 'UA-1 7.2', /^LBody$/, ({ parent }) =>
    parent?.type === 'LI' ? undefined : `stands in ${parent?.type}`,
  ),
];
