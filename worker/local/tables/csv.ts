export type { CsvFinding } from './finding.ts';
export { type Item, itemsFromCsv, type ReadCsv } from './from-csv.ts';
export { intoRecord, itemsIn } from './in-record.ts';
export { SHEETS, type SheetName, type Units } from './sheet.ts';
export { csvTemplate } from './template.ts';
export { type CsvForm, csvFromItems, csvFromLedger } from './to-csv.ts';
