import { writeFileSync } from 'node:fs';
import { nearest } from '../../core/record/nearest.ts';
import {
  type CsvFinding,
  type CsvForm,
  csvFromItems,
  csvFromLedger,
  csvTemplate,
  intoRecord,
  itemsFromCsv,
  itemsIn,
  SHEETS,
  type SheetName,
  type Units,
} from '../tables/csv.ts';
import { command, UsageError } from './command.ts';
import type { Output } from './output.ts';
import { textOf } from './read-file.ts';
import { readRecordFile } from './record-file.ts';

/** What the process answers with. */
const EXIT = { done: 0, findings: 1, notReadable: 2 } as const;

interface Asked {
  into?: string;
  out?: string;
  semicolons?: boolean;
}

export const csv = command({
  forms: [
    'template SHEET                  a table to fill in',
    'to-record SHEET FILE.csv [--into RECORD.json]',
    'from-record SHEET RECORD.json',
    'from-record ledger LEDGER.json  a chain, as an export holds it',
    `SHEET is one of ${Object.keys(SHEETS).join(', ')}`,
  ],
  options: {
    into: {
      type: 'string',
      value: 'RECORD',
      help: 'the record whose list is replaced; the list alone is written without it',
    },
    out: { type: 'string', value: 'FILE', help: 'where to; standard output where it is not given' },
    semicolons: { type: 'boolean', help: 'semicolons between columns and decimal commas, as half of Europe has them' },
  },
  exits: { 0: 'done', 1: 'the table has findings; nothing was written', 2: 'not readable, or not understood' },
  failures: { notUnderstood: EXIT.notReadable, failed: EXIT.notReadable },
  async run([task, name = '', file, ...rest], values: Asked, output) {
    const form: CsvForm = values.semicolons ? 'semicolons' : 'commas';
    if (rest.length > 0) throw new UsageError(`One file is named: ${rest[0]} is one too many`);
    if (task === 'template' && file === undefined)
      write(csvTemplate(sheetNamed(name), TEMPLATE_UNITS, form), values, output);
    else if (task === 'from-record' && file !== undefined) write(fromRecord(name, file, form), values, output);
    else if (task === 'to-record' && file !== undefined) return toRecord(sheetNamed(name), file, values, output);
    else throw new UsageError('What is to be done is not understood');
    return EXIT.done;
  },
});

const TEMPLATE_UNITS: Units = { mass: 'kg', arm: 'mm' };

function sheetNamed(name: string): SheetName {
  if (Object.hasOwn(SHEETS, name)) return name as SheetName;
  const near = nearest(name, Object.keys(SHEETS));
  throw new UsageError(`There is no sheet ${name}${near === undefined ? '' : `: ${near} may be meant`}`);
}

function write(text: string, { out }: Asked, output: Output): void {
  if (out === undefined) output.file(text);
  else {
    writeFileSync(out, text);
    output.say(out);
    output.result({ file: out });
  }
}

function fromRecord(name: string, file: string, form: CsvForm): string {
  const { value } = readRecordFile(file);
  if (name === 'ledger') return csvFromLedger((value as { entries?: Entries } | undefined)?.entries ?? [], form);
  const sheet = sheetNamed(name);
  const { units } = (value ?? {}) as { units?: Units };
  if (!units) throw new UsageError(`${file} declares no units: it is no record`);
  return csvFromItems(sheet, itemsIn(sheet, value), units, form);
}

type Entries = Parameters<typeof csvFromLedger>[0];

function toRecord(name: SheetName, file: string, asked: Asked, output: Output): number {
  const record = asked.into === undefined ? undefined : (readRecordFile(asked.into).value as { units?: Units });
  const read = itemsFromCsv(name, textOf(file), record?.units);
  if (!read.ok) {
    for (const finding of read.findings) say(finding, file, output);
    output.result({ findings: read.findings });
    return EXIT.findings;
  }
  const value = record === undefined ? read.items : intoRecord(name, record, read.items);
  write(`${JSON.stringify(value, null, 2)}\n`, asked, output);
  return EXIT.done;
}

function say({ severity, code, row, column, sentence, remedy }: CsvFinding, file: string, output: Output): void {
  output.say(`${severity.padEnd(8)}${code}  ${file}, row ${row}${column && `, ${column}`}`);
  output.say(`        ${sentence}`, `        ${remedy}`);
}
