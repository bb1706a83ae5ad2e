import * as z from 'zod';
import { factorOf, QUANTITY_SUFFIX, type Quantity, type Units } from '../units/quantity.ts';
import type { Measured } from './field.ts';

type Suffix = typeof QUANTITY_SUFFIX;

type QuantityOf<Value> =
  Value extends Measured<infer Name> ? Name : Value extends readonly Measured<infer Name>[] ? Name : never;

type Renamed<Key, Value> = Key extends string
  ? [QuantityOf<NonNullable<Value>>] extends [never]
    ? Key
    : `${Key}${Suffix[QuantityOf<NonNullable<Value>>]}`
  : Key;

/**
 * A record type after the door: every field that the record measures in its own units is in kg, mm, l, and its name says so
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
  /** Absent where nothing below is measured in the record's units. */
  convert?: Convert;
}

const UNTOUCHED: Plan = { suffix: '' };
const plans = new WeakMap<z.core.$ZodType, Plan>();

function planOf(schema: z.core.$ZodType): Plan {
  const known = plans.get(schema);
  if (known) return known;
  const plan = makePlan(schema);
  plans.set(schema, plan);
  return plan;
}

function makePlan(schema: z.core.$ZodType): Plan {
  const quantity = z.globalRegistry.get(schema)?.quantity as Quantity | undefined;
  if (quantity) {
    return { suffix: QUANTITY_SUFFIX[quantity], convert: (value, factors) => (value as number) * factors[quantity] };
  }
  if (schema instanceof z.ZodOptional) return planOf(schema.unwrap() as z.core.$ZodType);
  if (schema instanceof z.ZodArray) return arrayPlan(planOf(schema.element as z.core.$ZodType));
  if (schema instanceof z.ZodObject) return objectPlan(schema);
  if (schema instanceof z.ZodDiscriminatedUnion) return unionPlan(schema);
  return UNTOUCHED;
}

function arrayPlan(item: Plan): Plan {
  const { convert, suffix } = item;
  if (!convert) return UNTOUCHED;
  return { suffix, convert: (value, factors) => (value as unknown[]).map((entry) => convert(entry, factors)) };
}

function objectPlan(schema: z.ZodObject): Plan {
  const fields = Object.entries(schema.shape).map(([key, field]) => ({ key, plan: planOf(field as z.core.$ZodType) }));
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

function unionPlan(schema: z.ZodDiscriminatedUnion): Plan {
  const by = schema.def.discriminator;
  const options = new Map<unknown, Plan>();
  for (const option of schema.options) {
    const key = (option as z.ZodObject).shape[by] as z.ZodEnum;
    for (const value of key.options) options.set(value, planOf(option as z.core.$ZodType));
  }
  return {
    suffix: '',
    convert: (value, factors) =>
      options.get((value as Record<string, unknown>)[by])?.convert?.(value, factors) ?? value,
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
  const { convert } = planOf(schema);
  return (convert ? convert(value, factors) : value) as InCalculationUnits<z.infer<Schema>>;
}
