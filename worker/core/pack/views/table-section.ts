import type { View } from '../render.ts';

/** Column of a small table: its head, and whether its cells name the row, or are text or numbers. */
export type Column = readonly [kind: 'name' | 'text' | 'num', head: string];

/** Returns a small table, as the partial of its name prints it. */
export function tableOf(caption: string, columns: readonly Column[], rows: readonly (readonly string[])[]): View {
  return {
    caption,
    heads: columns.map(([kind, text]) => ({ text, kind: kind === 'num' ? 'num' : 'text' })),
    rows: rows.map((cells) => ({
      cells: cells.map((text, index) => {
        const kind = columns[index]?.[0] ?? 'text';
        return { text, kind, isName: kind === 'name' };
      }),
    })),
  };
}

/** Returns a section of tables and sentences. */
export function sectionOf(heading: string, tables: readonly View[], lines: readonly string[] = []): View {
  return { heading, tables, lines };
}
