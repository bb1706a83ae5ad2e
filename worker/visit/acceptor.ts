import type * as z from 'zod';

/** Whether a value is what a schema takes as it stands. */
export type Acceptor = (value: unknown) => boolean;

type Schema = z.core.$ZodType;
type Checks = readonly { _zod: { def: CheckDef } }[];

/** As much of a zod check as is looked at here. */
interface CheckDef {
  check: string;
  minimum?: number;
  maximum?: number;
  value?: number;
  inclusive?: boolean;
  format?: string;
  pattern?: RegExp;
  fn?: (value: unknown) => unknown;
}

/** As much of a zod schema as is looked at here. */
interface SchemaDef {
  type: string;
  check?: string;
  checks?: Checks;
  innerType?: Schema;
  element?: Schema;
  shape?: Readonly<Record<string, Schema>>;
  options?: readonly Schema[];
  discriminator?: string;
  entries?: Readonly<Record<string, string | number>>;
  values?: readonly unknown[];
}

const acceptors = new WeakMap<Schema, Acceptor>();

/**
 * Compiles a zod schema, once, into a function that says yes to a valid value, many times faster than zod reads it: it copies nothing and
 * collects nothing. What it does not know it leaves to zod, and whoever is told no asks zod for the reasons; so zod alone says what is
 * valid, and this only when there is nothing more to say.
 */
export function acceptorOf(schema: Schema): Acceptor {
  const known = acceptors.get(schema);
  if (known) return known;
  const acceptor = compiled(schema);
  acceptors.set(schema, acceptor);
  return acceptor;
}

function compiled(schema: Schema): Acceptor {
  const def = schema._zod.def as unknown as SchemaDef;
  const accepts = KINDS[def.type]?.(def);
  // A format such as a whole number is a schema and its own first check.
  const own = def.check === undefined ? [] : [schema as unknown as Checks[number]];
  const checks = [...own, ...(def.checks ?? [])].map(checkOf);
  if (!accepts || !checks.every((check) => check !== undefined)) return byZod(schema);
  if (checks.length === 0) return accepts;
  return (value) => accepts(value) && checks.every((check) => check(value));
}

const byZod =
  (schema: Schema): Acceptor =>
  (value) =>
    (schema as z.ZodType).safeParse(value).success;

const KINDS: Readonly<Record<string, (def: SchemaDef) => Acceptor | undefined>> = {
  string: () => (value) => typeof value === 'string',
  number: () => (value) => typeof value === 'number' && Number.isFinite(value),
  boolean: () => (value) => typeof value === 'boolean',
  literal: ({ values = [] }) => oneOf(values),
  enum: ({ entries = {} }) => oneOf(Object.values(entries)),
  optional: ({ innerType }) => innerType && orUndefined(acceptorOf(innerType)),
  array: ({ element }) => element && allOf(acceptorOf(element)),
  object: objectOf,
  union: unionOf,
};

function oneOf(values: readonly unknown[]): Acceptor {
  const known = new Set(values);
  return (value) => known.has(value);
}

function orUndefined(accepts: Acceptor): Acceptor {
  return (value) => value === undefined || accepts(value);
}

function allOf(accepts: Acceptor): Acceptor {
  return (value) => {
    if (!Array.isArray(value)) return false;
    // By number, because `every` passes over what was left out.
    for (let index = 0; index < value.length; index++) if (!accepts(value[index])) return false;
    return true;
  };
}

/** A strict object alone: any other would have to be copied without what it does not know. */
function objectOf(def: SchemaDef): Acceptor | undefined {
  const { catchall } = def as unknown as { catchall?: Schema };
  if (catchall?._zod.def.type !== 'never' || !def.shape) return undefined;
  const fields = new Map(Object.entries(def.shape).map(([key, field]) => [key, acceptorOf(field)]));
  const needed = Object.entries(def.shape).flatMap(([key, field]) => (field._zod.optin === undefined ? [key] : []));
  return (value) => {
    if (!isPlain(value)) return false;
    for (const key of needed) if (value[key] === undefined) return false;
    for (const key in value) if (!fields.get(key)?.(value[key])) return false;
    return true;
  };
}

function isPlain(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** A union that one field tells apart; others are left to zod. */
function unionOf({ discriminator, options = [] }: SchemaDef): Acceptor | undefined {
  if (discriminator === undefined) return undefined;
  const byKind = new Map<unknown, Acceptor>();
  for (const option of options) {
    const values = option._zod.propValues?.[discriminator];
    if (!values) return undefined;
    for (const value of values) byKind.set(value, acceptorOf(option));
  }
  return (value) => isPlain(value) && (byKind.get(value[discriminator])?.(value) ?? false);
}

/** A check as a function; undefined for one that is not known here. */
function checkOf({ _zod: { def } }: Checks[number]): Acceptor | undefined {
  const { check, minimum = 0, maximum = 0, value: bound = 0, inclusive = true, pattern, fn } = def;
  if (check === 'min_length') return (value) => (value as { length: number }).length >= minimum;
  if (check === 'max_length') return (value) => (value as { length: number }).length <= maximum;
  if (check === 'greater_than') return (value) => (inclusive ? (value as number) >= bound : (value as number) > bound);
  if (check === 'less_than') return (value) => (inclusive ? (value as number) <= bound : (value as number) < bound);
  if (check === 'number_format' && def.format === 'safeint') return Number.isSafeInteger;
  if (check === 'string_format' && pattern && !pattern.global && !pattern.sticky)
    return (value) => pattern.test(value as string);
  if (check === 'custom' && fn) return (value) => Boolean(fn(value));
  return undefined;
}
