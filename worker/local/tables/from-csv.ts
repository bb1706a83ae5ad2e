import * as z from 'zod';
import { pointer } from '../../core/record/pointer.ts';
import { recordIssues } from '../../core/record/record-issue.ts';
import { type DecimalMark, decimalMarkOf, numberIn } from './decimal.ts';
import type { CsvFinding } from './finding.ts';
import { restored } from './formula.ts';
import { type FilledColumn, readHeads } from './heads.ts';
import { parseTable, type Row, type Table } from './parse.ts';
import { SHEETS, type Sheet, type SheetName, type Units } from './sheet.ts';

export type Item = Record<string, unknown>;

export type ReadCsv = { ok: true; items: Item[]; units: Partial<Units> } | { ok: false; findings: CsvFinding[] };

/**
 * Reads the lines of a table as items of the record.
 *
 * @param units of the record, which the head line must not contradict. @default units in the head line
 */
export function itemsFromCsv(name: SheetName, file: string, units: Partial<Units> = {}): ReadCsv {
  const sheet = SHEETS[name];
  const table = parseTable(file);
  // If quotation marks do not match, the cells cannot be trusted.
  if (table.findings.length > 0) return { ok: false, findings: table.findings };
  const heads = readHeads(table.heads, sheet, units);
  const { filled } = heads;
  const mark = decimalMarkOf(numberCells(table, filled), table.delimiter);
  const findings = [...heads.findings, ...table.rows.flatMap((row) => tooMany(row, table))];
  const items = table.rows.map((row, index) => {
    const place = pointer(...sheet.place, index);
    return itemOf(row, filled, { mark, place, findings });
  });
  const said = new Set(findings.map(({ pointer: at }) => at));
  findings.push(...schemaFindings(items, sheet, table, filled).filter(({ pointer: at }) => !said.has(at)));
  return findings.length > 0 ? { ok: false, findings } : { ok: true, items, units: heads.units };
}

const numberCells = ({ rows }: Table, filled: readonly FilledColumn[]): string[] =>
  filled
    .filter(({ column }) => column.kind === 'number')
    .flatMap(({ index }) => rows.map(({ cells }) => cells[index]?.trim() ?? ''));

function tooMany({ number, cells }: Row, { heads }: Table): CsvFinding[] {
  if (!cells.slice(heads.length).some((cell) => cell.trim() !== '')) return [];
  const sentence = `Cannot read the table: row ${number} has more cells than the head line`;
  const remedy = 'Put a cell that holds what separates columns in quotation marks';
  return [{ code: 'CSV_CELLS_TOO_MANY', severity: 'blocks', row: number, column: '', pointer: '', sentence, remedy }];
}

interface Reading {
  mark: DecimalMark;
  place: string;
  findings: CsvFinding[];
}

function itemOf({ number, cells }: Row, filled: readonly FilledColumn[], { mark, place, findings }: Reading): Item {
  const item: Item = {};
  for (const { head, index, column, path } of filled) {
    const cell = cells[index] ?? '';
    if (cell.trim() === '' && !(column.kind === 'text' && cell !== '')) continue;
    const value = meantBy(cell, column, mark);
    if (typeof value === 'object' && 'unclear' in value) {
      findings.push(unclear(value.unclear, number, head, place + pointer(...path)));
      continue;
    }
    put(item, path, value);
  }
  return item;
}

const FLAGS: Readonly<Record<string, boolean>> = {
  true: true,
  yes: true,
  '1': true,
  false: false,
  no: false,
  '0': false,
};

/** Converts a cell to its value; an invalid cell stays text, so that the schema reports it. */
function meantBy(cell: string, { kind, schema }: FilledColumn['column'], mark: DecimalMark) {
  if (kind === 'number') return numberIn(cell, mark);
  if (kind === 'flag') return FLAGS[cell.trim().toLowerCase()] ?? cell;
  if (kind === 'names') return cell.trim().split(/[\s,;]+/);
  const text = restored(cell);
  // Spaces at the ends belong to text, and are a mistake in choices and numbers.
  return !z.safeParse(schema, text).success && z.safeParse(schema, text.trim()).success ? text.trim() : text;
}

/**
 * Sets a value at its path. An empty cell leaves a gap in a list, which the schema refuses: an omitted run is still a
 * run.
 */
function put(item: Item, [step = '', ...rest]: readonly (string | number)[], value: unknown): void {
  const at = item as Record<string | number, unknown>;
  if (rest.length === 0) at[step] = value;
  else {
    at[step] ??= typeof rest[0] === 'number' ? [] : {};
    put(at[step] as Item, rest, value);
  }
}

function unclear(cell: string, row: number, column: string, at: string): CsvFinding {
  return {
    code: 'CSV_NUMBER_UNCLEAR',
    severity: 'blocks',
    row,
    column,
    pointer: at,
    sentence: `Cannot read the table: row ${row}, ${column}: ${cell} may be two numbers, for its mark may part decimals or thousands`,
    remedy:
      'Part no thousands, and write all decimals of the file in one way: points where commas separate columns, else commas',
  };
}

/** Returns the findings of the record schema about the items, each with its cell. */
function schemaFindings(
  items: readonly Item[],
  sheet: Sheet,
  { rows }: Table,
  filled: readonly FilledColumn[],
): CsvFinding[] {
  const parsed = sheet.list.safeParse(items);
  if (parsed.success) return [];
  const issues = parsed.error.issues.map((issue) => ({ ...issue, path: [...sheet.place, ...issue.path] }));
  const input = sheet.place.reduceRight<unknown>((within, step) => ({ [step]: within }), items);
  const error = new z.ZodError(issues as z.core.$ZodIssue[]);
  return recordIssues(error, { input, posted: input, pathAsPosted: (path) => path }).flatMap((issue) => {
    const [index, ...path] = issue.pointer.split('/').slice(1 + sheet.place.length);
    const row = rows[Number(index)]?.number ?? 1;
    const column = filled.find((each) => holds(each, path));
    // A missing column is reported once.
    if (issue.code === 'RECORD_FIELD_MISSING' && isAbsent(path[0], sheet, filled)) return [];
    const head = column?.head ?? path.join(' ');
    const sentence = issue.sentence.replace(
      'Cannot read the record',
      `Cannot read the table: row ${row}${head && `, ${head}`}`,
    );
    return [{ ...issue, row, column: head, sentence }];
  });
}

/** Whether a column has the value at a path; the names of a list are in one cell. */
function holds({ column, path }: FilledColumn, wanted: readonly string[]): boolean {
  const within = column.kind === 'names' ? wanted.slice(0, 1) : wanted;
  return within.length > 0 && within.every((step, at) => String(path[at]) === step);
}

const isAbsent = (field: string | undefined, { columns }: Sheet, filled: readonly FilledColumn[]): boolean =>
  columns.some(
    (column) => column.isNeeded && column.path[0] === field && !filled.some((other) => other.column === column),
  );
