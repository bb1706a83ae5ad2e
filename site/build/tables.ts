import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { csvTemplate, SHEETS, type SheetName } from '../../worker/local/tables/csv.ts';

/** Writes the empty tables for spreadsheets, with either separator. */
export function writeTables(folder: string): void {
  mkdirSync(folder, { recursive: true });
  const units = { mass: 'kg', arm: 'mm' } as const;
  for (const name of Object.keys(SHEETS) as SheetName[]) {
    writeFileSync(join(folder, `${name}.csv`), csvTemplate(name, units));
    writeFileSync(join(folder, `${name}-semicolons.csv`), csvTemplate(name, units, 'semicolons'));
  }
}
