import { childElements, type Markup } from '../parse/markup.ts';

export type RowGroup = 'thead' | 'tbody' | 'tfoot';

/** A cell in the grid: its first column and the number of columns. `classes` has those of its column if it has none itself. */
export interface GridCell {
  element: Markup;
  column: number;
  span: number;
  classes: ReadonlySet<string>;
}

export interface GridRow {
  element: Markup;
  group: RowGroup;
  cells: GridCell[];
}

/** A table as rows over numbered columns. */
export interface Grid {
  caption: Markup | null;
  rows: GridRow[];
  columns: number;
}

const GROUPS: readonly string[] = ['thead', 'tbody', 'tfoot'] satisfies RowGroup[];

function gridRow(element: Markup, group: RowGroup, columnClasses: readonly ReadonlySet<string>[]): GridRow {
  let column = 0;
  const cells = childElements(element).map((cell): GridCell => {
    const span = Number(cell.attributes.colspan ?? 1);
    const classes = cell.classes.size > 0 ? cell.classes : (columnClasses[column] ?? cell.classes);
    if (!Number.isInteger(span) || span < 1)
      throw new Error(`Cannot typeset <table>: colspan must be 1 or more: current value is ${span}`);
    const placed = { element: cell, column, span, classes };
    column += span;
    return placed;
  });
  return { element, group, cells };
}

// A heading without a class is aligned like the figures below it.
function alignHeadings(grid: Grid): void {
  const numeric = Array.from({ length: grid.columns }, (_, column) => {
    const below = grid.rows
      .filter((row) => row.group === 'tbody')
      .flatMap((row) => row.cells.filter((cell) => cell.column === column && cell.span === 1));
    return below.length > 0 && below.every((cell) => cell.classes.has('num'));
  });
  for (const row of grid.rows) {
    if (row.group !== 'thead') continue;
    for (const cell of row.cells) {
      if (cell.span === 1 && cell.classes.size === 0 && numeric[cell.column]) cell.classes = new Set(['num']);
    }
  }
}

/** Reads a table. Throws if its rows are not equally wide. */
export function gridOf(table: Markup): Grid {
  const parts = childElements(table);
  const columnClasses = parts
    .filter((part) => part.name === 'colgroup')
    .flatMap((part) => childElements(part).map((col) => col.classes));
  const rows = parts
    .filter((part) => GROUPS.includes(part.name))
    .flatMap((part) => childElements(part).map((row) => gridRow(row, part.name as RowGroup, columnClasses)));
  const widths = new Set(rows.map((row) => row.cells.reduce((total, cell) => total + cell.span, 0)));
  if (widths.size > 1)
    throw new Error(`Cannot typeset <table>: rows must be equally wide: current values are ${[...widths].join(', ')}`);
  const grid = { caption: parts.find((part) => part.name === 'caption') ?? null, rows, columns: [...widths][0] ?? 0 };
  alignHeadings(grid);
  return grid;
}
