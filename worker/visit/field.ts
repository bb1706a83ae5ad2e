import * as z from 'zod';
import { LIMITS } from '../limits.ts';
import { isDate, isMoment } from '../units/calendar.ts';
import type { Quantity } from '../units/quantity.ts';

/**
 * The kinds of field a record is made of. Each carries title, description, unit and example, because the published JSON
 * Schema is what an editor completes and checks a record with.
 */
interface Bounds {
  min?: number;
  max?: number;
}

const described = <Schema extends z.ZodType>(
  schema: Schema,
  title: string,
  description: string,
  example: unknown,
  more: Record<string, unknown> = {},
): Schema => schema.meta({ title, description, examples: [example], ...more }) as Schema;

/** One line of text. */
export function line(title: string, description: string, example: string, max: number = LIMITS.lineLength) {
  const schema = z
    .string()
    .min(1)
    .max(max)
    .regex(/^[^\n\r]*$/, 'one line');
  return described(schema, title, description, example);
}

/** Text of several lines. */
export function prose(title: string, description: string, example: string) {
  return described(z.string().min(1).max(LIMITS.proseLength), title, description, example);
}

/** An identifier by which parts of the record name each other. */
export function id(title: string, description: string, example: string) {
  const schema = z
    .string()
    .regex(/^[A-Za-z0-9][A-Za-z0-9._-]{0,39}$/, 'letters, digits, dot, hyphen or underscore, at most 40');
  return described(schema, title, description, example);
}

/** SHA-256 of a file, in lower-case hexadecimal. */
export function digest(title: string, description: string) {
  const schema = z.string().regex(/^[0-9a-f]{64}$/, '64 hexadecimal digits, lower case');
  return described(schema, title, description, 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855');
}

export function date(title: string, description: string, example: string) {
  const schema = z.string().refine(isDate, 'a date as YYYY-MM-DD');
  return described(schema, title, description, example, { format: 'date' });
}

/** A moment with its offset from UTC, so that the order of events is never in doubt. */
export function moment(title: string, description: string, example: string) {
  const schema = z.string().refine(isMoment, 'a moment with seconds and UTC offset, as 2026-11-03T16:20:00+01:00');
  return described(schema, title, description, example, { format: 'date-time' });
}

export function flag(title: string, description: string, example: boolean) {
  return described(z.boolean(), title, description, example);
}

export function choice<const Values extends readonly [string, ...string[]]>(
  title: string,
  description: string,
  values: Values,
) {
  return described(z.enum(values), title, description, values[0]);
}

/** A number in a unit that every record shares, named in the field's own name. */
export function number(title: string, description: string, unit: string, example: number, { min, max }: Bounds = {}) {
  const schema = z
    .number()
    .min(min ?? -LIMITS.number)
    .max(max ?? LIMITS.number);
  return described(schema, title, description, example, { unit });
}

export function count(title: string, description: string, example: number, { min = 0, max = 100_000 }: Bounds = {}) {
  return described(z.int().min(min).max(max), title, description, example, { unit: '1' });
}

declare const quantityOf: unique symbol;

/** A number in the unit that the record declares for a quantity: never to be mixed with one in a unit of calculation. */
export type Measured<Name extends Quantity> = number & { readonly [quantityOf]: Name };

/** A number in the unit that the record declares for its quantity; the door converts it to the units of calculation. */
function quantity<Name extends Quantity>(name: Name, defaults: Bounds) {
  return (title: string, description: string, example: number, { min, max }: Bounds = {}) => {
    const schema = z
      .number()
      .min(min ?? defaults.min ?? -LIMITS.number)
      .max(max ?? defaults.max ?? LIMITS.number);
    const meta = { unit: `units.${name}`, quantity: name };
    return described(schema, title, description, example, meta) as unknown as z.ZodType<Measured<Name>, number>;
  };
}

export const mass = quantity('mass', { min: 0 });
export const arm = quantity('arm', {});
export const momentOfMass = quantity('moment', {});
export const volume = quantity('volume', { min: 0 });
export const density = quantity('density', { min: 0 });
export const flow = quantity('flow', { min: 0 });

/** A list with an upper bound on its length: every list of a record has one. */
export function list<Item extends z.ZodType>(
  title: string,
  description: string,
  item: Item,
  { min = 0, max = 500 }: Bounds = {},
) {
  return z.array(item).min(min).max(max).meta({ title, description });
}

/** An object that refuses unknown keys. */
export function part<Shape extends z.core.$ZodLooseShape>(title: string, description: string, shape: Shape) {
  return z.strictObject(shape).meta({ title, description });
}
