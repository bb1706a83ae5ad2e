import type { Check } from '../check.ts';
import type { Page, PdfFile } from '../pdf-file.ts';

/** A check of each page by itself. */
function onPages(name: string, clause: string, defectsOf: (page: Page) => string[]): Check {
  return {
    name,
    clause,
    defects: ({ pages }) => pages.flatMap((page, i) => defectsOf(page).map((defect) => `page ${i + 1}: ${defect}`)),
  };
}

// ISO 32000-1, annex A.
const OPERATORS = new Set(
  'b B b* B* BDC BI BMC BT BX c cm CS cs d d0 d1 Do DP EI EMC ET EX f F f* G g gs h i ID j J K k l m M MP n q Q re RG rg ri s S SC sc SCN scn sh T* Tc Td TD Tf Tj TJ TL Tm Tr Ts Tw Tz v w W W* y \' "'.split(
    ' ',
  ),
);

const repeated = <Value>(values: readonly Value[]): Value[] => values.filter((value, i) => values.indexOf(value) < i);

/** Marked contents by the tree that names them: `page reference, id`. */
function namedContents({ elements }: PdfFile): string[] {
  return elements.flatMap(({ contents }) => contents.map(({ page, id }) => `${page} #${id}`));
}

const drawnContents = ({ pages }: PdfFile): string[] =>
  pages.flatMap(({ reference, content }) =>
    content.marks.flatMap(({ id }) => (id === undefined ? [] : [`${reference} #${id}`])),
  );

export const CONTENT_CHECKS: readonly Check[] = [
  onPages('operators known', 'A-3 6.2.2', ({ content }) =>
    [...content.operators].filter((operator) => !OPERATORS.has(operator)),
  ),
  onPages('resources named', 'A-3 6.2.2', ({ content }) => content.missing),
  onPages('operators in pairs', 'ISO 32000-1 8.4.2, 9.4.1, 14.6', ({ content }) => content.unbalanced),
  onPages('all content marked', 'UA-1 7.1', ({ content }) => content.unmarked),
  onPages('artefacts and tagged content apart', 'UA-1 7.1', ({ content }) =>
    content.marks
      .filter(({ tag, id, within }) => (tag === 'Artifact' ? within.length > 0 : id !== undefined && within.length > 0))
      .map(({ tag, within }) => `${tag} stands within ${within.join(' ')}`),
  ),
  onPages('content is tagged or an artefact', 'UA-1 7.1', ({ content }) =>
    content.marks
      .filter(({ tag, id, within }) => tag !== 'Artifact' && id === undefined && within.length === 0)
      .map(({ tag }) => `${tag} is neither`),
  ),
  onPages('content identifiers unique', 'ISO 32000-1 14.7.4', ({ content }) =>
    repeated(content.marks.flatMap(({ id }) => (id === undefined ? [] : [id]))).map((id) => `MCID ${id} again`),
  ),
  {
    name: 'tagged content in the tree, once',
    clause: 'ISO 32000-1 14.7.4',
    defects: (file) => {
      const named = namedContents(file);
      const known = new Set(named);
      const drawn = new Set(drawnContents(file));
      return [
        ...[...drawn].filter((content) => !known.has(content)).map((content) => `${content} is in no element`),
        ...named.filter((content) => !drawn.has(content)).map((content) => `${content} is drawn nowhere`),
        ...repeated(named).map((content) => `${content} is in two elements`),
      ];
    },
  },
  {
    name: 'tags of content are those of their elements',
    clause: 'ours',
    defects: ({ pages, elements }) => {
      const roles = new Map(
        elements.flatMap(({ role, contents }) =>
          contents.map(({ page, id }): [string, string] => [`${page} #${id}`, role]),
        ),
      );
      return pages.flatMap(({ reference, content }) =>
        content.marks.flatMap(({ tag, id }) => {
          const role = roles.get(`${reference} #${id}`);
          return id === undefined || role === undefined || role === tag ? [] : [`${tag} in an element ${role}`];
        }),
      );
    },
  },
];
