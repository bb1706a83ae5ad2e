import type * as z from 'zod';
import { factorOf, QUANTITY_SUFFIX, type Quantity, type Units } from '../units/quantity.ts';
import type { Measured } from './field.ts';
import { quantityIn } from './meaning.ts';
import { type SchemaTree, treeOf } from './schema-tree.ts';

// Why fields are renamed: two shapes under one name invite mixing them. Pointers in findings keep the name of the
// field as posted.

type Suffix = typeof QUANTITY_SUFFIX;

type QuantityOf<Value> =
  Value extends Measured<infer Name> ? Name : Value extends readonly Measured<infer Name>[] ? Name : never;

type Renamed<Key, Value> = Key extends string
  ? [QuantityOf<NonNullable<Value>>] extends [never]
    ? Key
    : `${Key}${Suffix[QuantityOf<NonNullable<Value>>]}`
  : Key;

/**
 * Type of a record in calculation units: every field in the record's own units is in kg, mm, l, and its name says so
 * (`mass` becomes `massKg`, `readings` becomes `readingsKg`).
 */
export type InCalculationUnits<T> =
  T extends Measured<Quantity>
    ? number
    : T extends readonly (infer Item)[]
      ? InCalculationUnits<Item>[]
      : T extends object
        ? { [Key in keyof T as Renamed<Key, T[Key]>]: InCalculationUnits<T[Key]> }
        : T;

type Convert = (value: unknown, factors: Record<Quantity, number>) => unknown;
interface Plan {
  suffix: string;
  /** Absent if nothing below is measured in the record's units. */
  convert?: Convert;
}

const UNTOUCHED: Plan = { suffix: '' };
const plans = new WeakMap<SchemaTree, Plan>();

function planOf(tree: SchemaTree): Plan {
  const known = plans.get(tree);
  if (known) return known;
  const plan = makePlan(tree);
  plans.set(tree, plan);
  return plan;
}

function makePlan({ means, shape }: SchemaTree): Plan {
  if (shape.kind === 'list') return listPlan(planOf(shape.item));
  if (shape.kind === 'part') return partPlan(shape.fields);
  if (shape.kind === 'variants') return variantsPlan(shape.by, shape.variants);
  const quantity = quantityIn(means);
  if (quantity === undefined) return UNTOUCHED;
  return { suffix: QUANTITY_SUFFIX[quantity], convert: (value, factors) => (value as number) * factors[quantity] };
}

function listPlan({ convert, suffix }: Plan): Plan {
  if (!convert) return UNTOUCHED;
  return { suffix, convert: (value, factors) => (value as unknown[]).map((entry) => convert(entry, factors)) };
}

function partPlan(shape: ReadonlyMap<string, SchemaTree>): Plan {
  const fields = [...shape].map(([key, field]) => ({ key, plan: planOf(field) }));
  if (fields.every(({ plan }) => !plan.convert)) return UNTOUCHED;
  return {
    suffix: '',
    convert: (value, factors) => {
      const from = value as Record<string, unknown>;
      const to: Record<string, unknown> = {};
      for (const { key, plan } of fields) {
        const field = from[key];
        if (field === undefined) continue;
        to[key + plan.suffix] = plan.convert ? plan.convert(field, factors) : field;
      }
      return to;
    },
  };
}

function variantsPlan(by: string, variants: ReadonlyMap<unknown, SchemaTree>): Plan {
  const plansByKind = new Map([...variants].map(([kind, variant]) => [kind, planOf(variant)]));
  return {
    suffix: '',
    convert: (value, factors) =>
      plansByKind.get((value as Record<string, unknown>)[by])?.convert?.(value, factors) ?? value,
  };
}

/**
 * Converts a valid record, or any part of it, from the units it declares to kg, mm, l.
 *
 * @example inCalculationUnits(Weighing, weighing, units).points[0].armMm
 */
export function inCalculationUnits<Schema extends z.ZodType>(
  schema: Schema,
  value: z.infer<Schema>,
  units: Units,
): InCalculationUnits<z.infer<Schema>> {
  const factors = Object.fromEntries(
    Object.keys(QUANTITY_SUFFIX).map((quantity) => [quantity, factorOf(quantity as Quantity, units)]),
  ) as Record<Quantity, number>;
  const { convert } = planOf(treeOf(schema));
  return (convert ? convert(value, factors) : value) as InCalculationUnits<z.infer<Schema>>;
}
