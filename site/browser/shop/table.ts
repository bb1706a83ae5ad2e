import { element } from '../element.ts';

type Cell = Node | string;

/**
 * Returns a table in its own frame; the first cell of a row names it. On a phone each row is a block, its cells one
 * under another. ARIA roles are set, because browsers drop the table semantics of blocks.
 */
export function table(heads: readonly string[], rows: readonly (readonly Cell[])[]): HTMLElement {
  const head = element('tr', { role: 'row' }, ...heads.map(headCell));
  return element(
    'div',
    { className: 'scroll', tabIndex: 0 },
    element(
      'table',
      { role: 'table', className: 'blocks' },
      element('thead', { role: 'rowgroup' }, head),
      element('tbody', { role: 'rowgroup' }, ...rows.map((row) => tableRow(row, heads))),
    ),
  );
}

const headCell = (text: string): HTMLElement => element('th', { scope: 'col', role: 'columnheader' }, text);

/** @param heads head of each column */
export function tableRow([name = '', ...cells]: readonly Cell[], [, ...heads]: readonly string[]): HTMLElement {
  return element(
    'tr',
    { role: 'row' },
    element('th', { scope: 'row', role: 'rowheader' }, name),
    ...cells.map((cell, index) => dataCell(cell, heads[index] ?? '')),
  );
}

function dataCell(cell: Cell, head: string): HTMLElement {
  const made = element('td', { role: 'cell' }, cell);
  made.dataset.head = head;
  return made;
}
