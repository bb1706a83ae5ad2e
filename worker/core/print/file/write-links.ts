import type { Drawn } from '../draw/draw-pages.ts';
import { number, textString } from '../draw/pdf-text.ts';
import type { Tag } from '../measure/tag.ts';
import type { ObjectStore } from './object-store.ts';

/** A written link annotation, with its key in the parent tree. */
export interface WrittenLink {
  reference: string;
  page: number;
  tag: Tag;
  parentKey: number;
}

/** Writes a link annotation for each piece of linked text. Throws for a link without a target: the templates are ours. */
export function writeLinks({ links, anchors }: Drawn, pages: readonly string[], store: ObjectStore): WrittenLink[] {
  let parentKey = pages.length;
  return links.flatMap((onPage, page) =>
    onPage.map(({ tag, target, text, box }) => {
      const place = anchors.get(target);
      if (!place) throw new Error(`Cannot print: a link must lead to an id in the job: current value is "#${target}"`);
      const key = parentKey++;
      const reference = store.add(
        `<</Type/Annot/Subtype/Link/F 4/Border[0 0 0]/Rect[${box.map(number).join(' ')}]/Contents${textString(text)}` +
          `/StructParent ${key}/Dest[${pages[place.page]} /XYZ null ${number(place.yPt)} null]>>`,
      );
      return { reference, page, tag, parentKey: key };
    }),
  );
}
