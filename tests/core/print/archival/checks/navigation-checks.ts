import type { PDFDict, PDFObject } from 'pdf-lib';
import { PDFName } from 'pdf-lib';
import type { Check } from '../check.ts';
import { get, isTrue, keysOf, listOf, nameOf, numberOf, numberTree, textOf, unfollowed } from '../objects.ts';
import type { Page, PdfFile } from '../pdf-file.ts';

interface Annotation {
  page: number;
  reference: string;
  object: PDFObject | undefined;
}

const annotationsOf = ({ pages, context }: PdfFile): Annotation[] =>
  pages.flatMap(({ dict }, i) =>
    unfollowed(get(dict, 'Annots')).map((annotation) => ({
      page: i + 1,
      reference: String(annotation),
      object: context.lookup(annotation),
    })),
  );

function onPages(name: string, clause: string, isKept: (page: Page) => boolean): Check {
  return {
    name,
    clause,
    defects: ({ pages }) => pages.flatMap((page, i) => (isKept(page) ? [] : [`page ${i + 1}`])),
  };
}

function onAnnotations(
  name: string,
  clause: string,
  isKept: (annotation: Annotation, file: PdfFile) => boolean,
): Check {
  return {
    name,
    clause,
    defects: (file) =>
      annotationsOf(file)
        .filter((annotation) => !isKept(annotation, file))
        .map(({ page, reference }) => `${reference} on page ${page}`),
  };
}

// Print is set; hidden, invisible, toggled and no-view are not (ISO 32000-1, table 165).
const PRINT = 4;
const UNSEEN = 1 | 2 | 32 | 256;

function leadsToPage(annotation: PDFObject | undefined, { pages }: PdfFile): boolean {
  const [page] = listOf(get(annotation, 'Dest'));
  return pages.some(({ dict }) => dict === page);
}

function isInTree({ reference, object }: Annotation, { catalogue, elements, context }: PdfFile): boolean {
  const entry = numberTree(get(catalogue, 'StructTreeRoot', 'ParentTree')).get(
    numberOf(get(object, 'StructParent')) ?? -1,
  );
  const owner = elements.find(({ annotations }) => annotations.includes(reference));
  return owner !== undefined && owner.type === 'Link' && entry !== undefined && context.lookup(entry) === owner.object;
}

function bookmarksBelow(entry: PDFObject | undefined): PDFObject[] {
  const found: PDFObject[] = [];
  for (let at = get(entry, 'First'); at !== undefined && found.length < 10_000; at = get(at, 'Next'))
    found.push(at, ...bookmarksBelow(at));
  return found;
}

const FORBIDDEN = ['AA', 'OpenAction', 'JS', 'JavaScript', 'A', 'AcroForm', 'XFA'] as const;

export const NAVIGATION_CHECKS: readonly Check[] = [
  {
    name: 'title shown',
    clause: 'UA-1 7.1',
    defects: ({ catalogue }) =>
      isTrue(get(catalogue, 'ViewerPreferences', 'DisplayDocTitle')) ? [] : ['the window does not show the title'],
  },
  onPages('tab order', 'UA-1 7.18.3', ({ dict }) => nameOf(get(dict, 'Tabs')) === 'S'),
  onPages('page keys', 'ISO 32000-1 14.7.4.4', ({ dict }) => numberOf(get(dict, 'StructParents')) !== undefined),
  onAnnotations('annotation types', 'A-3 6.3.1', ({ object }) => nameOf(get(object, 'Subtype')) === 'Link'),
  onAnnotations('annotation flags', 'A-3 6.3.2', ({ object }) => {
    const flags = numberOf(get(object, 'F')) ?? 0;
    return (flags & PRINT) !== 0 && (flags & UNSEEN) === 0;
  }),
  onAnnotations('links described', 'UA-1 7.18.5', ({ object }) => Boolean(textOf(get(object, 'Contents'))?.trim())),
  onAnnotations('links in the tree', 'UA-1 7.18.5, ISO 32000-1 14.7.4.4', isInTree),
  onAnnotations('links lead to a page', 'ours', ({ object }, file) => leadsToPage(object, file)),
  {
    name: 'no actions',
    clause: 'A-3 6.4, 6.5',
    defects: ({ objects }) =>
      objects.flatMap((object) =>
        keysOf(object)
          .filter((key) => FORBIDDEN.some((forbidden) => key === forbidden))
          // Attributes of structure elements stand under A as well.
          .filter((key) => key !== 'A' || (object as PDFDict).get?.(PDFName.of('S')) === undefined)
          .map((key) => `an object has ${key}`),
      ),
  },
  {
    name: 'no alternates, layers or requirements',
    clause: 'A-3 6.9, 6.10, 6.11',
    defects: ({ objects }) =>
      objects.flatMap((object) =>
        keysOf(object).filter((key) =>
          ['OCProperties', 'AlternatePresentations', 'PresSteps', 'Requirements'].includes(key),
        ),
      ),
  },
  {
    name: 'bookmarks',
    clause: 'UA-1 7.17',
    defects: (file) => {
      const bookmarks = bookmarksBelow(get(file.catalogue, 'Outlines'));
      const lost = bookmarks.filter(
        (bookmark) => !textOf(get(bookmark, 'Title'))?.trim() || !leadsToPage(bookmark, file),
      );
      return [
        ...(bookmarks.length > 0 ? [] : ['there are none']),
        ...lost.map((bookmark) => `${textOf(get(bookmark, 'Title'))} leads nowhere`),
      ];
    },
  },
  {
    name: 'page labels',
    clause: 'UA-1 7.17',
    defects: ({ catalogue }) =>
      numberTree(get(catalogue, 'PageLabels')).has(0) ? [] : ['the first page has no label'],
  },
];
