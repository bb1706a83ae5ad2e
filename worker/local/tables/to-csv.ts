import Papa from 'papaparse';
import { defused } from './formula.ts';
import type { Item } from './from-csv.ts';
import { type Column, headOf, isRepeated, NUMBER, SHEETS, type SheetName, type Units } from './sheet.ts';

/** Form of a table: as RFC 4180 defines it, or as spreadsheets of half of Europe open it directly. */
export type CsvForm = 'commas' | 'semicolons';

/** Min. number of repeated columns in a table, to be filled in. */
export const MIN_REPEATED = 3;

/**
 * Writes items of the record as a table. `itemsFromCsv` reads the same items back; an empty list in an item is then
 * missing.
 *
 * @param units of the record, which are written in the head line
 */
export function csvFromItems(name: SheetName, items: readonly Item[], units: Units, form: CsvForm = 'commas'): string {
  const { columns } = SHEETS[name];
  const cells = blocksOf(columns).flatMap((block) => cellsOf(block, items));
  const fields = cells.map(({ column, count }) => headOf(column, units, count));
  const data = items.map((item) => cells.map(({ column, count }) => cellOf(item, column, count, form)));
  return tableText(fields, data, form);
}

/** Columns of a ledger entry, in this order; users may rely on them. */
const LEDGER = ['seq', 'at', 'kind', 'body', 'previous', 'digest'] as const;

/** Writes the chain of an aircraft as a table for audits; the proof is the chain itself. */
export function csvFromLedger(
  entries: readonly Readonly<Record<(typeof LEDGER)[number], string | number>>[],
  form: CsvForm = 'commas',
): string {
  const data = entries.map((entry) => LEDGER.map((field) => textCell(entry[field])));
  return tableText([...LEDGER], data, form);
}

const textCell = (value: string | number): string => (typeof value === 'number' ? String(value) : defused(value));

function tableText(fields: string[], data: string[][], form: CsvForm): string {
  const delimiter = form === 'commas' ? ',' : ';';
  const text = Papa.unparse({ fields, data }, { delimiter, newline: '\r\n' });
  // Without a byte order mark such spreadsheets assume their own code page.
  return `${form === 'commas' ? '' : '\uFEFF'}${text}${data.length > 0 ? '\r\n' : ''}`;
}

interface CellColumn {
  column: Column;
  count: number;
}

/** Groups columns that are repeated together: the readings, then the pairs of corrections. */
function blocksOf(columns: readonly Column[]): Column[][] {
  const blocks = Map.groupBy(columns, ({ path }) => path[0]);
  return [...blocks.values()];
}

function cellsOf(block: readonly Column[], items: readonly Item[]): CellColumn[] {
  const [first] = block;
  if (!first || !isRepeated(first)) return block.map((column) => ({ column, count: 1 }));
  const lengths = items.map((item) => (item[String(first.path[0])] as unknown[] | undefined)?.length ?? 0);
  const counts = Array.from(
    { length: lengths.reduce((most, length) => Math.max(most, length), MIN_REPEATED) },
    (_, index) => index + 1,
  );
  return counts.flatMap((count) => block.map((column) => ({ column, count })));
}

function cellOf(item: Item, { path }: Column, count: number, form: CsvForm): string {
  const value = path.reduce<unknown>((at, step) => {
    return (at as Record<string | number, unknown> | undefined)?.[step === NUMBER ? count - 1 : step];
  }, item);
  if (value === undefined) return '';
  if (Array.isArray(value)) return value.join(' ');
  if (typeof value === 'number') return form === 'commas' ? String(value) : String(value).replace('.', ',');
  return typeof value === 'string' ? defused(value) : String(value);
}
