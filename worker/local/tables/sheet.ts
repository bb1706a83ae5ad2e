import * as z from 'zod';
import { Baseline } from '../../core/record/baseline.ts';
import { quantityOf } from '../../core/record/meaning.ts';
import { nodeOf, type Schema, withoutOptional } from '../../core/record/schema-node.ts';
import type { UnitsPart } from '../../core/record/units.ts';
import { Weighing } from '../../core/record/weighing.ts';
import { Worksheet } from '../../core/record/worksheet.ts';

// A unit in the header is compared and never converted. Papa Parse reads and writes quotation marks and separators
// (RFC 4180); the meaning of a cell is ours.

/** List of the record that is written as a table, one line an item. */
export interface Sheet {
  name: SheetName;
  /** Path of the list in the record. */
  place: readonly string[];
  list: z.ZodArray;
  columns: readonly Column[];
}

export type SheetName = 'equipment' | 'scales' | 'points' | 'worksheet';

/**
 * Field of the items. Its name in the head line is its path, steps separated by spaces, numbers from 1: `readings 2`.
 */
export interface Column {
  /** Path, as `['mass']`, `['readings', NUMBER]`, `['corrections', NUMBER, 'add']`. */
  path: readonly (string | typeof NUMBER)[];
  kind: 'text' | 'number' | 'flag' | 'names';
  /** Quantity, if the record declares its unit, which is then in the head line: `mass (kg)`. */
  quantity: 'mass' | 'arm' | undefined;
  isNeeded: boolean;
  schema: Schema;
}

/** Placeholder for the number of a repeated field. */
export const NUMBER = '#';

const sheet = (name: SheetName, place: readonly string[], list: z.ZodArray): Sheet => ({
  name,
  place,
  list,
  columns: columnsOf(list.element),
});

/** All sheets; their columns follow from the schema of the record, so that none can be forgotten. */
export const SHEETS: Readonly<Record<SheetName, Sheet>> = {
  equipment: sheet('equipment', ['baseline', 'equipment'], Baseline.shape.equipment.unwrap() as unknown as z.ZodArray),
  scales: sheet('scales', ['weighing', 'scales'], Weighing.shape.scales as unknown as z.ZodArray),
  points: sheet('points', ['weighing', 'points'], Weighing.shape.points as unknown as z.ZodArray),
  worksheet: sheet('worksheet', ['worksheet'], Worksheet as unknown as z.ZodArray),
};

function columnsOf(item: Schema): Column[] {
  return columnsAt([], item, true);
}

function columnsAt(path: Column['path'], field: Schema, isNeeded: boolean): Column[] {
  const [schema, node] = [withoutOptional(field), nodeOf(field)];
  const needed = isNeeded && schema === field;
  if (node.kind === 'list') {
    const names = withoutOptional(node.item) instanceof z.ZodString;
    return names
      ? [{ path, kind: 'names', quantity: undefined, isNeeded: needed, schema }]
      : columnsAt([...path, NUMBER], node.item, needed);
  }
  if (node.kind === 'part')
    return Object.entries(node.fields).flatMap(([name, inner]) => columnsAt([...path, name], inner, needed));
  return [{ path, kind: kindOf(schema), quantity: declaredOf(quantityOf(schema)), isNeeded: needed, schema }];
}

function kindOf(schema: Schema): Column['kind'] {
  if (schema instanceof z.ZodNumber) return 'number';
  return schema instanceof z.ZodBoolean ? 'flag' : 'text';
}

/** Returns the quantity if a head line states its unit. */
function declaredOf(quantity: ReturnType<typeof quantityOf>): Column['quantity'] {
  return quantity === 'mass' || quantity === 'arm' ? quantity : undefined;
}

export type Units = Pick<UnitsPart, 'mass' | 'arm'>;

/** Returns the head of a column. @param count number of the repetition, from 1 */
export function headOf({ path, quantity }: Column, units: Partial<Units>, count = 1): string {
  const name = path.map((step) => (step === NUMBER ? count : step)).join(' ');
  const unit = quantity && units[quantity];
  return unit === undefined ? name : `${name} (${unit})`;
}

/** Whether a field is repeated. */
export const isRepeated = ({ path }: Column): boolean => path.includes(NUMBER);
