import * as z from 'zod';
import { LIMITS } from '../limits.ts';
import { IDENTIFIER, SHA256 } from '../patterns.ts';
import { type FieldText, fieldText } from '../text/field-texts.ts';
import { isDate, isTimestamp } from '../units/calendar.ts';
import type { Quantity } from '../units/quantity.ts';
import {
  type ArmMeaning,
  type Authority,
  type EntryKind,
  type IdentifierMeaning,
  meaning,
  type Naming,
  type PastDateMeaning,
  type ReferenceMeaning,
} from './meaning.ts';

// zod is imported as a namespace: the named import keeps its 63 locales, 65 kB compressed, in the Worker and in
// every page.

// Kinds of field of a record. Each carries title, description, unit and example, because editors complete and check a
// record with the published JSON Schema; and its meaning, by which release check, tables and pages find it.

interface Bounds {
  min?: number;
  max?: number;
}

const described = <Schema extends z.ZodType>(
  schema: Schema,
  text: FieldText,
  example: unknown,
  more: Record<string, unknown> = {},
): Schema => schema.meta({ ...fieldText(text), examples: [example], ...more }) as Schema;

/** Builds a field for one line of text. */
export function line(text: FieldText, example: string, max: number = LIMITS.lineLength) {
  const schema = z
    .string()
    .min(1)
    .max(max)
    .regex(/^[^\n\r]*$/, 'one line');
  return meaning(described(schema, text, example), { kind: 'text' });
}

/** Builds a field for text of several lines. */
export function prose(text: FieldText, example: string) {
  const schema = z.string().min(1).max(LIMITS.proseLength);
  return meaning(described(schema, text, example), { kind: 'text' });
}

/** Builds a field for a short name without blanks. A name of a part of the record is an `identifier`, a `reference` or a `person`. */
export function id(text: FieldText, example: string) {
  const schema = z.string().regex(IDENTIFIER, 'letters, digits, dot, hyphen or underscore, at most 40');
  return described(schema, text, example);
}

/** Builds the field by which other parts of the record refer to an entry. */
export function identifier(
  of: IdentifierMeaning['of'],
  text: FieldText,
  example: string,
  more: Pick<IdentifierMeaning, 'repeatable'> = {},
) {
  return meaning(id(text, example), { kind: 'identifier', of, ...more });
}

/** Builds a reference to an entry of another part of the record; a reference to a missing entry is a finding. */
export function reference(
  to: EntryKind | ReferenceMeaning['to'],
  text: FieldText,
  example: string,
  more: Omit<ReferenceMeaning, 'kind' | 'to'> = {},
) {
  return meaning(id(text, example), {
    kind: 'reference',
    to: typeof to === 'string' ? [to] : to,
    ...more,
  });
}

/** Builds a reference to a person of the record, with their role and the authorisation that it requires. */
export function person(text: FieldText, example: string, doing: Naming, authority?: Authority) {
  return meaning(id(text, example), { kind: 'person', doing, ...(authority && { authority }) });
}

/** Builds a field for the SHA-256 of a file, in lower-case hexadecimal. */
export function digest(text: FieldText) {
  const schema = z.string().regex(SHA256, '64 hexadecimal digits, lower case');
  return described(schema, text, 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855');
}

export function date(text: FieldText, example: string) {
  const schema = z.string().refine(isDate, 'a date as YYYY-MM-DD');
  return described(schema, text, example, { format: 'date' });
}

/** Builds a field for the date of a past event: a date in the future is a finding. */
export function pastDate(
  text: FieldText,
  example: string,
  event: Naming,
  more: Pick<PastDateMeaning, 'code' | 'after' | 'before'> = {},
) {
  return meaning(date(text, example), { kind: 'past-date', event, ...more });
}

interface TimeBounds {
  after?: readonly string[];
  before?: readonly string[];
  earlierUntil?: string;
  early?: string;
  late?: string;
  future?: string;
}

/**
 * Builds a field for a timestamp with its offset from UTC, so that the order of events is never in doubt. It lies
 * between the arrival and the end of work, unless `early` or `late` states why not, and not in the future, unless
 * `future` does.
 */
export function timestamp(
  text: FieldText,
  example: string,
  event: Naming,
  { after = [], before = [], ...bounds }: TimeBounds = {},
) {
  const schema = z.string().refine(isTimestamp, 'a moment with seconds and UTC offset, as 2026-11-03T16:20:00+01:00');
  return meaning(described(schema, text, example, { format: 'date-time' }), {
    kind: 'timestamp',
    event,
    after: [...(bounds.early === undefined ? ['visit.arrivedAt'] : []), ...after],
    before: [...(bounds.late === undefined ? ['visit.workEndedAt'] : []), ...before],
    ...bounds,
  });
}

export function flag(text: FieldText, example: boolean) {
  return described(z.boolean(), text, example);
}

export function choice<const Values extends readonly [string, ...string[]]>(text: FieldText, values: Values) {
  return described(z.enum(values), text, values[0]);
}

/** Builds a field for a number in a unit that every record shares, named in the field's own name. */
export function number(text: FieldText, unit: string, example: number, { min, max }: Bounds = {}) {
  const schema = z
    .number()
    .min(min ?? -LIMITS.number)
    .max(max ?? LIMITS.number);
  return described(schema, text, example, { unit });
}

export function count(text: FieldText, example: number, { min = 0, max = 100_000 }: Bounds = {}) {
  return described(z.int().min(min).max(max), text, example, { unit: '1' });
}

declare const quantityOf: unique symbol;

/** A number in the unit that the record declares for a quantity: never mixed with one in a calculation unit. */
export type Measured<Name extends Quantity> = number & { readonly [quantityOf]: Name };

/** Builds a field for a number in the unit that the record declares for its quantity; the parse step converts it to calculation units. */
function measured<Name extends Quantity>(
  quantity: Name,
  [text, example]: readonly [text: FieldText, example: number],
  { min = -LIMITS.number, max = LIMITS.number }: Bounds,
) {
  const schema = z.number().min(min).max(max);
  const unit = { unit: `units.${quantity}`, quantity };
  return described(schema, text, example, unit) as unknown as z.ZodType<Measured<Name>, number>;
}

function quantity<Name extends Quantity>(name: Name, defaults: Bounds) {
  return (text: FieldText, example: number, bounds: Bounds = {}) =>
    meaning(measured(name, [text, example], { ...defaults, ...bounds }), {
      kind: 'quantity',
      quantity: name,
    });
}

export const mass = quantity('mass', { min: 0 });
export const momentOfMass = quantity('moment', {});
export const volume = quantity('volume', { min: 0 });
export const density = quantity('density', { min: 0 });
export const flow = quantity('flow', { min: 0 });

/** A length or an offset in the unit of arms, not measured from the datum. */
export const distance = quantity('arm', {});

/** Builds a field for an arm from the datum: outside the airframe it is a finding, unless `outside` states why not. */
export function arm(text: FieldText, example: number, more: Pick<ArmMeaning, 'of' | 'outside'> = {}) {
  return meaning(measured('arm', [text, example], {}), { kind: 'arm', quantity: 'arm', ...more });
}

/** Builds a list with an upper bound on its length: every list of a record has one. */
export function list<Item extends z.ZodType>(text: FieldText, item: Item, { min = 0, max = 500 }: Bounds = {}) {
  return z.array(item).min(min).max(max).meta(fieldText(text));
}

/**
 * Builds an object that refuses unknown keys; clients name its type by the id of its text.
 *
 * @param calledBy the field that names it in a sentence (default: its identifier)
 */
export function part<Shape extends z.core.$ZodLooseShape>(
  text: FieldText,
  shape: Shape,
  calledBy?: keyof Shape & string,
) {
  const name = text.charAt(0).toUpperCase() + text.slice(1);
  const schema = z.strictObject(shape).meta({ ...fieldText(text), 'x-name': name });
  return calledBy === undefined ? schema : meaning(schema, { kind: 'part', calledBy });
}
