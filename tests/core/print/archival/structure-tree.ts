import { PDFArray, type PDFContext, PDFNumber, type PDFObject } from 'pdf-lib';
import { get, getUnfollowed, nameOf, numberOf, unfollowed } from './objects.ts';

/** An element of the structure tree. */
export interface StructureElement {
  /** Its object, as `12 0 R`. */
  reference: string;
  object: PDFObject | undefined;
  /** The type it is written with, and the one that the role map makes of it. */
  role: string;
  type: string;
  parent: StructureElement | undefined;
  children: StructureElement[];
  /** Marked contents, the page as the reference of its object. */
  contents: { page: string; id: number }[];
  /** Annotations, by reference. */
  annotations: string[];
}

const referenceIn = (object: PDFObject | undefined, key: string): string => String(getUnfollowed(object, key) ?? '');

// K is one kid or an array of them, and the array may be an object of its own.
function kidsOf(object: PDFObject | undefined, context: PDFContext): PDFObject[] {
  const kids = getUnfollowed(object, 'K');
  const followed = context.lookup(kids);
  return unfollowed(followed instanceof PDFArray ? followed : kids);
}

/** All elements below the root of a structure tree, parents first, in reading order. */
export function elementsOf(root: PDFObject | undefined, context: PDFContext): StructureElement[] {
  const elements: StructureElement[] = [];
  const typeOf = (role: string): string => {
    let type = role;
    // A map that goes in a circle ends here, at a type that is not standard.
    for (let step = 0; step < 8; step++) type = nameOf(get(root, 'RoleMap', type)) ?? type;
    return type;
  };
  const read = (kid: PDFObject, parent: StructureElement | undefined): void => {
    if (kid instanceof PDFNumber) {
      parent?.contents.push({ page: referenceIn(parent.object, 'Pg'), id: kid.asNumber() });
      return;
    }
    const object = context.lookup(kid);
    const kind = nameOf(get(object, 'Type'));
    if (kind === 'MCR') {
      const page = referenceIn(object, 'Pg') || referenceIn(parent?.object, 'Pg');
      parent?.contents.push({ page, id: numberOf(get(object, 'MCID')) ?? -1 });
      return;
    }
    if (kind === 'OBJR') {
      parent?.annotations.push(referenceIn(object, 'Obj'));
      return;
    }
    const role = nameOf(get(object, 'S')) ?? '';
    const element: StructureElement = {
      reference: String(kid),
      object,
      role,
      type: typeOf(role),
      parent,
      children: [],
      contents: [],
      annotations: [],
    };
    elements.push(element);
    parent?.children.push(element);
    for (const below of kidsOf(object, context)) read(below, element);
  };
  for (const kid of kidsOf(root, context)) read(kid, undefined);
  return elements;
}
