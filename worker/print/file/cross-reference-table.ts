/** The row of one object in a cross-reference stream (ISO 32000-1, table 18). */
export type TableRow = readonly [type: number, second: number, third: number];

/** Row of an object that stands in the file itself. */
export function rowAt(offset: number): TableRow {
  return [1, offset, 0];
}

/** Row of an object within an object stream. */
export function rowWithin(streamNumber: number, index: number): TableRow {
  return [2, streamNumber, index];
}

// The head of the list of free objects, which every table begins with.
const FREE: TableRow = [0, 0, 65_535];

const bytesFor = (value: number): number => Math.ceil(value.toString(2).length / 8);

// Runs of numbers without a gap: the first, and how many.
function subsections(numbers: readonly number[]): number[] {
  const runs: [first: number, count: number][] = [];
  for (const number of numbers) {
    const run = runs.at(-1);
    if (run && run[0] + run[1] === number) run[1]++;
    else runs.push([number, 1]);
  }
  return runs.flat();
}

/** A cross-reference stream before it is deflated, and the entries of its dictionary. */
export interface CrossReferenceTable {
  contents: Uint8Array;
  entries: { W: string; Index: string };
}

/** Cross-reference stream of all objects (ISO 32000-1, 7.5.8), by object number. */
export function crossReferenceTable(rows: ReadonlyMap<number, TableRow>): CrossReferenceTable {
  const sorted: [number: number, row: TableRow][] = [[0, FREE], ...[...rows].sort(([one], [other]) => one - other)];
  const columns = [0, 1, 2] as const;
  const widths = columns.map((column) => Math.max(...sorted.map(([, row]) => bytesFor(row[column]))));
  const contents: number[] = [];
  for (const [, row] of sorted) {
    for (const column of columns) {
      for (let byte = (widths[column] ?? 0) - 1; byte >= 0; byte--) {
        contents.push(Math.floor(row[column] / 256 ** byte) % 256);
      }
    }
  }
  const array = (numbers: readonly number[]): string => `[ ${numbers.join(' ')} ]`;
  return {
    contents: Uint8Array.from(contents),
    entries: { W: array(widths), Index: array(subsections(sorted.map(([number]) => number))) },
  };
}
