import Papa from 'papaparse';
import type { CsvFinding } from './finding.ts';

export interface Row {
  /** Row number as in spreadsheets: the head line is 1. */
  number: number;
  cells: string[];
}

/** Table as in a file (RFC 4180, and the variants of spreadsheets). */
export interface Table {
  delimiter: Delimiter;
  heads: string[];
  /** Without empty rows. */
  rows: Row[];
  findings: CsvFinding[];
}

export type Delimiter = ',' | ';' | '\t';
const DELIMITERS: readonly Delimiter[] = [',', ';', '\t'];

const BYTE_ORDER_MARK = '\uFEFF';

/** Parses a table. The head line shows the separator of the columns. */
export function parseTable(file: string): Table {
  const text = file.replace(BYTE_ORDER_MARK, '').replaceAll(/\r\n?/g, '\n');
  const delimiter = delimiterOf(text);
  const { data, errors } = Papa.parse<string[]>(text, { delimiter, newline: '\n' });
  const [heads = [], ...lines] = data;
  const rows = lines.map((cells, index) => ({ number: index + 2, cells }));
  return {
    delimiter,
    heads: heads.map((head) => head.trim()),
    rows: rows.filter(({ cells }) => cells.some((cell) => cell !== '')),
    findings: errors.filter(({ type }) => type === 'Quotes').map(({ row = 0 }) => quoteWrong(row + 1)),
  };
}

/** Returns the delimiter with the largest number of cells in the head line. */
function delimiterOf(text: string): Delimiter {
  const widths = DELIMITERS.map((delimiter) => {
    const [head = []] = Papa.parse<string[]>(text, { delimiter, newline: '\n', preview: 1 }).data;
    return { delimiter, width: head.length };
  });
  return widths.reduce((best, other) => (other.width > best.width ? other : best)).delimiter;
}

const quoteWrong = (row: number): CsvFinding => ({
  code: 'CSV_QUOTE_WRONG',
  severity: 'blocks',
  row,
  column: '',
  pointer: '',
  sentence: `Cannot read the table: the quotation marks of row ${row} do not match`,
  remedy: 'Put a cell in quotation marks as a whole, and write each mark within it twice',
});
