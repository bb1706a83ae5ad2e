import type { Tag } from '../measure/tag.ts';

/** Content of a structure element, in reading order. */
export type Kid = { kind: 'element'; element: Element } | { kind: 'content'; page: number; id: number };

/** An element of the structure tree with its content. `box` is the position of a figure. */
export interface Element {
  tag: Tag;
  parent: Element | null;
  kids: Kid[];
  box: readonly [number, number, number, number] | null;
}

/** Structure tree during drawing: elements enter it in reading order, which is the order of drawing. */
export interface Structure {
  root: Element;
  /** All elements, parents first. */
  elements: Element[];
  element: (tag: Tag) => Element;
  /** Element of each marked content, by page. */
  contentOf: Element[][];
}

/** Creates an empty structure tree below a root. */
export function createStructure(rootTag: Tag): Structure {
  const root: Element = { tag: rootTag, parent: null, kids: [], box: null };
  const known = new Map<Tag, Element>([[rootTag, root]]);
  const elements = [root];
  const element = (tag: Tag): Element => {
    const found = known.get(tag);
    if (found) return found;
    const parent = tag.parent ? element(tag.parent) : root;
    const created: Element = { tag, parent, kids: [], box: null };
    parent.kids.push({ kind: 'element', element: created });
    known.set(tag, created);
    elements.push(created);
    return created;
  };
  return { root, elements, element, contentOf: [] };
}
