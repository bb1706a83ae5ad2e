/** Attributes, classes and content of an element of the subset. */
export interface Allowed {
  attributes: readonly string[];
  classes: readonly string[];
  /** May contain text directly. */
  text: boolean;
}

const structure = (...classes: string[]): Allowed => ({ attributes: [], classes, text: false });
const prose = (...classes: string[]): Allowed => ({ attributes: [], classes, text: true });
const cell = (...attributes: string[]): Allowed => ({ attributes, classes: CELL_CLASSES, text: true });
const shape = (...attributes: string[]): Allowed => ({
  attributes: [...attributes, ...PAINT],
  classes: [],
  text: false,
});

const CELL_CLASSES = ['num', 'text', 'tick', 'nowrap', 'out', 'ok', 'muted', 'wide', 'narrow'];
const PAINT = ['stroke', 'stroke-width', 'stroke-dasharray', 'stroke-linecap', 'stroke-linejoin', 'fill'];
const LETTERING = ['font-size', 'font-weight', 'text-anchor'];

/** HTML of the templates: every element, with its attributes and classes; any element may have an id. */
export const SUBSET: Readonly<Record<string, Allowed>> = {
  article: { ...structure(), attributes: ['lang'] },
  header: structure(),
  section: structure('keep'),
  h1: prose(),
  h2: prose(),
  h3: prose(),
  p: prose('lede', 'small', 'formula'),
  ul: structure(),
  ol: structure(),
  li: prose(),
  dl: structure('facts', 'wide'),
  dt: prose(),
  dd: prose('num', 'nowrap', 'out', 'ok', 'muted'),
  div: { ...structure('columns', 'signature', 'cut', 'legible'), attributes: ['data-width-mm', 'data-height-mm'] },
  aside: prose('caution', 'note', 'mark'),
  figure: structure(),
  figcaption: prose(),
  img: { ...structure(), attributes: ['src', 'alt', 'data-width-mm'] },
  table: structure('ruled', 'plain', 'compact'),
  caption: prose(),
  colgroup: structure(),
  col: structure(...CELL_CLASSES),
  thead: structure(),
  tbody: structure(),
  tfoot: structure(),
  tr: structure('total', 'out', 'sub'),
  th: cell('scope', 'colspan'),
  td: cell('colspan'),
  strong: prose(),
  em: prose(),
  code: prose(),
  sub: prose(),
  sup: prose(),
  small: prose(),
  br: structure(),
  a: { ...prose(), attributes: ['href'] },
  span: { ...prose('nowrap', 'out', 'ok', 'muted'), attributes: ['data-page-of'] },
  svg: { ...structure(), attributes: ['viewBox', 'role', 'aria-label', 'data-width-mm'] },
  g: shape(...LETTERING),
  line: shape('x1', 'y1', 'x2', 'y2'),
  polyline: shape('points'),
  polygon: shape('points'),
  path: shape('d'),
  rect: shape('x', 'y', 'width', 'height'),
  circle: shape('cx', 'cy', 'r'),
  text: { ...shape('x', 'y', ...LETTERING), classes: ['label'], text: true },
};
