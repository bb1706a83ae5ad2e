import { nearest } from '../../core/record/nearest.ts';
import type { CsvFinding } from './finding.ts';
import { type Column, headOf, NUMBER, type Sheet, type Units } from './sheet.ts';

/** Column of a file, and the field that it fills. */
export interface FilledColumn {
  head: string;
  /** Index of the cell in a line. */
  index: number;
  column: Column;
  /** Path in the item, as `['readings', 0]`. */
  path: (string | number)[];
}

export interface ReadHeads {
  filled: FilledColumn[];
  /** Units in the heads. */
  units: Partial<Units>;
  findings: CsvFinding[];
}

/** Finds the field of every column. Capitals and spaces at the ends do not matter. */
export function readHeads(heads: readonly string[], sheet: Sheet, units: Partial<Units>): ReadHeads {
  const read: ReadHeads = { filled: [], units: { ...units }, findings: [] };
  for (const [index, head] of heads.entries()) {
    // Spreadsheets leave empty columns at the end.
    if (head !== '') readHead(head, index, sheet, read);
  }
  const present = new Set(read.filled.map(({ column }) => column));
  for (const column of sheet.columns)
    if (column.isNeeded && !present.has(column)) read.findings.push(missing(headOf(column, units), sheet));
  return read;
}

/** Limit for repeated columns, larger than any list of a record; the schema has the exact limits. */
const MAX_REPEATED = 100;

function readHead(head: string, index: number, sheet: Sheet, read: ReadHeads): void {
  const [, name = '', unit] = /^(.*?)\s*(?:\(([^()]*)\))?$/.exec(head) ?? [];
  const counts = [...name.matchAll(/\d+/g)].map(([digits]) => Number(digits));
  const wanted = name.toLowerCase().replaceAll(/\d+/g, NUMBER).replaceAll(/\s+/g, ' ');
  const column = sheet.columns.find(({ path }) => path.join(' ').toLowerCase() === wanted);
  if (!column || counts.some((count) => count < 1 || count > MAX_REPEATED)) {
    read.findings.push(unknown(head, sheet));
    return;
  }
  const path = column.path.map((step) => (step === NUMBER ? (counts[0] ?? 1) - 1 : step));
  const isTwice = read.filled.some((other) => other.path.join() === path.join());
  if (isTwice) read.findings.push(twice(head));
  else read.filled.push({ head, index, column, path });
  if (unit !== undefined) checkUnit(head, unit.trim(), column, read);
}

function checkUnit(head: string, unit: string, { quantity }: Column, { units, findings }: ReadHeads): void {
  if (quantity === undefined) return;
  const expected = units[quantity];
  if (expected === undefined) units[quantity] = unit as never;
  else if (expected !== unit)
    findings.push(
      finding(
        'CSV_UNIT_DIFFERS',
        head,
        `the unit of every ${quantity} must be ${expected}: that of ${head} is ${unit}`,
        `Convert the column to ${expected}, or declare ${unit} in the units of the record`,
      ),
    );
}

function unknown(head: string, { columns }: Sheet): CsvFinding {
  const known = columns.map((column) => headOf(column, {}));
  const near = nearest(head.replace(/\s*\(.*/, ''), known);
  const remedy = near === undefined ? `Remove it; the columns are ${known.join(', ')}` : `Write ${near}, or remove it`;
  return finding('CSV_COLUMN_UNKNOWN', head, `there is no column ${head}`, remedy);
}

const twice = (head: string): CsvFinding =>
  finding('CSV_COLUMN_TWICE', head, `the column ${head} is given twice`, 'Remove the one that is not meant');

const missing = (head: string, { name }: Sheet): CsvFinding =>
  finding(
    'CSV_COLUMN_MISSING',
    head,
    `the column ${head} must be given`,
    `Add it; the template of ${name} has every column`,
  );

const finding = (code: CsvFinding['code'], column: string, what: string, remedy: string): CsvFinding => ({
  code,
  severity: 'blocks',
  row: 1,
  column,
  pointer: '',
  sentence: `Cannot read the table: ${what}`,
  remedy,
});
