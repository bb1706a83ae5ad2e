import * as z from 'zod';
import { Baseline } from '../visit/baseline.ts';
import type { UnitsPart } from '../visit/units.ts';
import { Weighing } from '../visit/weighing.ts';
import { Worksheet } from '../visit/worksheet.ts';

/** A list of the record that is written as a table, one line an item. */
export interface Sheet {
  name: SheetName;
  /** Where the list stands in the record. */
  place: readonly string[];
  list: z.ZodArray;
  columns: readonly Column[];
}

export type SheetName = 'equipment' | 'scales' | 'points' | 'worksheet';

/** A field of the items. Its name in the head line is its path, steps apart by spaces, numbers from 1: `readings 2`. */
export interface Column {
  /** As `['mass']`, `['readings', NUMBER]`, `['corrections', NUMBER, 'add']`. */
  path: readonly (string | typeof NUMBER)[];
  kind: 'text' | 'number' | 'flag' | 'names';
  /** Where the record declares its unit, which the head line then says: `mass (kg)`. */
  quantity: 'mass' | 'arm' | undefined;
  isNeeded: boolean;
  schema: z.ZodType;
}

/** Stands for the number of a repeated field. */
export const NUMBER = '#';

const sheet = (name: SheetName, place: readonly string[], list: z.ZodArray): Sheet => ({
  name,
  place,
  list,
  columns: columnsOf(list.element as z.ZodObject),
});

/** Every sheet; its columns follow from the schema of the record, so that none can be forgotten. */
export const SHEETS: Readonly<Record<SheetName, Sheet>> = {
  equipment: sheet('equipment', ['baseline', 'equipment'], Baseline.shape.equipment.unwrap() as unknown as z.ZodArray),
  scales: sheet('scales', ['weighing', 'scales'], Weighing.shape.scales as unknown as z.ZodArray),
  points: sheet('points', ['weighing', 'points'], Weighing.shape.points as unknown as z.ZodArray),
  worksheet: sheet('worksheet', ['worksheet'], Worksheet as unknown as z.ZodArray),
};

function columnsOf({ shape }: z.ZodObject): Column[] {
  return Object.entries(shape).flatMap(([name, schema]) => columnsAt([name], schema as z.ZodType, true));
}

function columnsAt(path: Column['path'], schema: z.ZodType, isNeeded: boolean): Column[] {
  if (schema instanceof z.ZodOptional) return columnsAt(path, schema.unwrap() as z.ZodType, false);
  if (schema instanceof z.ZodArray) {
    const item = schema.element as z.ZodType;
    if (item instanceof z.ZodString) return [{ path, kind: 'names', quantity: undefined, isNeeded, schema }];
    return columnsAt([...path, NUMBER], item, isNeeded);
  }
  if (schema instanceof z.ZodObject)
    return Object.entries(schema.shape).flatMap(([name, field]) =>
      columnsAt([...path, name], field as z.ZodType, isNeeded),
    );
  const quantity = z.globalRegistry.get(schema)?.quantity as Column['quantity'];
  return [{ path, kind: kindOf(schema), quantity, isNeeded, schema }];
}

function kindOf(schema: z.ZodType): Column['kind'] {
  if (schema instanceof z.ZodNumber) return 'number';
  return schema instanceof z.ZodBoolean ? 'flag' : 'text';
}

export type Units = Pick<UnitsPart, 'mass' | 'arm'>;

/** What the head line says of a column. @param count which of a repeated field, from 1 */
export function headOf({ path, quantity }: Column, units: Partial<Units>, count = 1): string {
  const name = path.map((step) => (step === NUMBER ? count : step)).join(' ');
  const unit = quantity && units[quantity];
  return unit === undefined ? name : `${name} (${unit})`;
}

/** Whether a field is given several times over. */
export const isRepeated = ({ path }: Column): boolean => path.includes(NUMBER);
