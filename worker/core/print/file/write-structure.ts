import { number, textString } from '../draw/pdf-text.ts';
import type { Element, Kid, Structure } from '../draw/structure.ts';
import type { ObjectStore } from './object-store.ts';
import type { WrittenLink } from './write-links.ts';

function attributesOf({ tag, box }: Element): string {
  const table = [tag.scope ? `/Scope/${tag.scope}` : '', tag.columnSpan ? `/ColSpan ${tag.columnSpan}` : ''].join('');
  const owners: string[] = [];
  if (table !== '') owners.push(`<</O/Table${table}>>`);
  if (tag.numbering) owners.push(`<</O/List/ListNumbering/${tag.numbering}>>`);
  if (box) owners.push(`<</O/Layout/Placement/Block/BBox[${box.map(number).join(' ')}]>>`);
  const attributes = owners.length > 1 ? `/A[${owners.join('')}]` : owners.length === 1 ? `/A${owners[0]}` : '';
  const alt = tag.alt === undefined ? '' : `/Alt${textString(tag.alt)}`;
  const language = tag.language === undefined ? '' : `/Lang${textString(tag.language)}`;
  return attributes + alt + language;
}

/** Writes the structure tree and returns its root. One text per element: thousands of dictionaries would cost more than the drawing. */
export function writeStructure(
  structure: Structure,
  links: readonly WrittenLink[],
  pages: readonly string[],
  store: ObjectStore,
): string {
  const rootReference = store.reserve();
  const references = new Map<Element, string>(structure.elements.map((element) => [element, store.reserve()]));
  const referenceOf = (element: Element): string => references.get(element) ?? rootReference;
  const annotationsOf = new Map<Element, WrittenLink[]>();
  for (const link of links) {
    const element = structure.element(link.tag);
    annotationsOf.set(element, [...(annotationsOf.get(element) ?? []), link]);
  }

  const kidText = (kid: Kid, page: number | undefined): string => {
    if (kid.kind === 'element') return referenceOf(kid.element);
    // Content on the element's own page is only its number.
    return kid.page === page ? String(kid.id) : `<</Type/MCR/Pg ${pages[kid.page]}/MCID ${kid.id}>>`;
  };
  for (const element of structure.elements) {
    const page = element.kids.find((kid) => kid.kind === 'content')?.page;
    const annotations = annotationsOf.get(element) ?? [];
    const kids = [
      ...element.kids.map((kid) => kidText(kid, page)),
      ...annotations.map((link) => `<</Type/OBJR/Pg ${pages[link.page]}/Obj ${link.reference}>>`),
    ];
    const parent = element.parent ? referenceOf(element.parent) : rootReference;
    const on = page === undefined ? '' : `/Pg ${pages[page]}`;
    const content = kids.length === 0 ? '' : kids.length === 1 ? `/K ${kids[0]}` : `/K[${kids.join(' ')}]`;
    store.put(referenceOf(element), `<</S/${element.tag.role}/P ${parent}${on}${content}${attributesOf(element)}>>`);
  }

  const byPage = structure.contentOf.map((elements, page) => `${page}[${elements.map(referenceOf).join(' ')}]`);
  const byLink = links.map((link) => `${link.parentKey} ${referenceOf(structure.element(link.tag))}`);
  const parentTree = store.add(`<</Nums[${[...byPage, ...byLink].join(' ')}]>>`);
  const nextKey = pages.length + links.length;
  store.put(
    rootReference,
    `<</Type/StructTreeRoot/K[${referenceOf(structure.root)}]/ParentTree ${parentTree}/ParentTreeNextKey ${nextKey}>>`,
  );
  return rootReference;
}
