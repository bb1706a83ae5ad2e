import * as z from 'zod';
import { nodeOf, type Schema, withoutOptional } from '../../core/record/schema-node.ts';
import type { Item } from './from-csv.ts';
import { SHEETS, type SheetName, type Units } from './sheet.ts';
import { type CsvForm, csvFromItems, MIN_REPEATED } from './to-csv.ts';

/** Returns an empty table: the head line, and the examples of the schema in the line below. */
export function csvTemplate(name: SheetName, units: Units, form: CsvForm = 'commas'): string {
  return csvFromItems(name, [exampleOf(SHEETS[name].list.element) as Item], units, form);
}

function exampleOf(field: Schema): unknown {
  const node = nodeOf(field);
  if (node.kind === 'part')
    return Object.fromEntries(Object.entries(node.fields).map(([name, inner]) => [name, exampleOf(inner)]));
  const schema = withoutOptional(field);
  if (node.kind !== 'list') return (z.globalRegistry.get(schema)?.examples as unknown[] | undefined)?.[0];
  const length = withoutOptional(node.item) instanceof z.ZodNumber ? MIN_REPEATED : 1;
  return Array.from({ length }, () => exampleOf(node.item));
}
