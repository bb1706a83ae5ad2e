import * as z from 'zod';
import type { Item } from './from-csv.ts';
import { SHEETS, type SheetName, type Units } from './sheet.ts';
import { type CsvForm, csvFromItems, LEAST_REPEATED } from './to-csv.ts';

/** A table to fill in: the head line, and the examples of the schema in the line below. */
export function csvTemplate(name: SheetName, units: Units, form: CsvForm = 'commas'): string {
  return csvFromItems(name, [exampleOf(SHEETS[name].list.element as z.ZodType) as Item], units, form);
}

function exampleOf(schema: z.ZodType): unknown {
  if (schema instanceof z.ZodOptional) return exampleOf(schema.unwrap() as z.ZodType);
  if (schema instanceof z.ZodObject)
    return Object.fromEntries(
      Object.entries(schema.shape).map(([name, field]) => [name, exampleOf(field as z.ZodType)]),
    );
  if (!(schema instanceof z.ZodArray)) return (z.globalRegistry.get(schema)?.examples as unknown[] | undefined)?.[0];
  const item = schema.element as z.ZodType;
  const length = item instanceof z.ZodNumber ? LEAST_REPEATED : 1;
  return Array.from({ length }, () => exampleOf(item));
}
