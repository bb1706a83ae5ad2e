import { element } from '../element.ts';

type Cell = Node | string;

/** A table in a frame of its own, so that what is wide is moved sideways; the first cell of a row names it. */
export function table(heads: readonly string[], rows: readonly (readonly Cell[])[]): HTMLElement {
  const head = element('tr', {}, ...heads.map((text) => element('th', { scope: 'col' }, text)));
  return element(
    'div',
    { className: 'scroll', tabIndex: 0 },
    element('table', {}, element('thead', {}, head), element('tbody', {}, ...rows.map(tableRow))),
  );
}

export const tableRow = ([name = '', ...cells]: readonly Cell[]): HTMLElement =>
  element('tr', {}, element('th', { scope: 'row' }, name), ...cells.map((cell) => element('td', {}, cell)));
