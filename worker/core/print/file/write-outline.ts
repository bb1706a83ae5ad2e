import { number, textString } from '../draw/pdf-text.ts';
import type { Bookmark } from '../draw/surface.ts';
import type { ObjectStore } from './object-store.ts';

interface Entry {
  bookmark: Bookmark;
  reference: string;
  children: Entry[];
}

// Second level headings are below the first level heading before them.
function nested(bookmarks: readonly Bookmark[], store: ObjectStore): Entry[] {
  const top: Entry[] = [];
  for (const bookmark of bookmarks) {
    const entry = { bookmark, reference: store.reserve(), children: [] };
    const above = bookmark.level > 1 ? top.at(-1) : undefined;
    (above ? above.children : top).push(entry);
  }
  return top;
}

function writeEntries(entries: readonly Entry[], parent: string, pages: readonly string[], store: ObjectStore): void {
  entries.forEach(({ bookmark, reference, children }, i) => {
    const [before, after] = [entries[i - 1], entries[i + 1]];
    const parts = [
      `/Title${textString(bookmark.title)}/Parent ${parent}/Dest[${pages[bookmark.page]} /XYZ null ${number(bookmark.yPt)} null]`,
      before ? `/Prev ${before.reference}` : '',
      after ? `/Next ${after.reference}` : '',
      // A negative count keeps the entry closed: the outline opens as the list of documents.
      children.length > 0
        ? `/First ${children[0]?.reference}/Last ${children.at(-1)?.reference}/Count -${children.length}`
        : '',
    ];
    store.put(reference, `<<${parts.join('')}>>`);
    writeEntries(children, reference, pages, store);
  });
}

/** Writes the outline and returns its entry for the catalogue; empty without headings. */
export function writeOutline(bookmarks: readonly Bookmark[], pages: readonly string[], store: ObjectStore): string {
  const root = store.reserve();
  const entries = nested(bookmarks, store);
  const [first] = entries;
  if (!first) return '';
  writeEntries(entries, root, pages, store);
  store.put(
    root,
    `<</Type/Outlines/First ${first.reference}/Last ${entries.at(-1)?.reference}/Count ${entries.length}>>`,
  );
  return `/Outlines ${root}/PageMode/UseOutlines`;
}
