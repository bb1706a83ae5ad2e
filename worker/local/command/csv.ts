import { writeFileSync } from 'node:fs';
import { upgrade } from '../../core/record/upgrades.ts';
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
import { didYouMean } from './did-you-mean.ts';
import type { Output } from './output.ts';
import { textOf } from './read-file.ts';
import { readRecordFile } from './record-file.ts';

/** Exit codes. */
const EXIT = { done: 0, findings: 1, notReadable: 2 } as const;

interface Asked {
  into?: string;
  out?: string;
  semicolons?: boolean;
}

export const csv = command({
  forms: [
    `template ${Object.keys(SHEETS).join('|')}`,
    'to-record SHEET FILE.csv [--into RECORD.json]',
    'from-record SHEET RECORD.json',
    'from-record ledger LEDGER.json  writes the chain of an exported aircraft',
  ],
  options: {
    into: {
      type: 'string',
      value: 'RECORD',
      help: 'record to put the list into (default: write only the list)',
    },
    out: { type: 'string', value: 'FILE', help: 'output file (default: standard output)' },
    semicolons: { type: 'boolean', help: 'write semicolons between columns, and decimal commas' },
  },
  exits: { 0: 'done', 1: 'table has findings; nothing written', 2: 'file or command line not readable' },
  failures: { notUnderstood: EXIT.notReadable, failed: EXIT.notReadable },
  async run([task, name = '', file, ...rest], values: Asked, output) {
    const form: CsvForm = values.semicolons ? 'semicolons' : 'commas';
    if (rest.length > 0) throw new UsageError(`Unexpected argument: ${rest[0]}`);
    if (task === 'template' && file === undefined)
      write(csvTemplate(sheetNamed(name), TEMPLATE_UNITS, form), values, output);
    else if (task === 'from-record' && file !== undefined) write(fromRecord(name, file, form), values, output);
    else if (task === 'to-record' && file !== undefined) return toRecord(sheetNamed(name), file, values, output);
    else throw new UsageError('Unknown form of the command');
    return EXIT.done;
  },
});

const TEMPLATE_UNITS: Units = { mass: 'kg', arm: 'mm' };

function sheetNamed(name: string): SheetName {
  if (Object.hasOwn(SHEETS, name)) return name as SheetName;
  throw new UsageError(`Unknown sheet ${name}${didYouMean(name, Object.keys(SHEETS))}`);
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
  const value = upgrade(readRecordFile(file).value);
  if (name === 'ledger') return csvFromLedger((value as { entries?: Entries } | undefined)?.entries ?? [], form);
  const sheet = sheetNamed(name);
  const { units } = (value ?? {}) as { units?: Units };
  if (!units) throw new UsageError(`${file} declares no units: not a record`);
  return csvFromItems(sheet, itemsIn(sheet, value), units, form);
}

type Entries = Parameters<typeof csvFromLedger>[0];

function toRecord(name: SheetName, file: string, asked: Asked, output: Output): number {
  const record =
    asked.into === undefined ? undefined : (upgrade(readRecordFile(asked.into).value) as { units?: Units });
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
