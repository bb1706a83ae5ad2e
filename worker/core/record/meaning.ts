import type * as z from 'zod';
import * as m from '../text/generated/messages.ts';
import type { Message, Value } from '../text/message.ts';
import type { Quantity } from '../units/quantity.ts';
import type { Schema } from './schema-node.ts';
import type { Scope } from './scopes.ts';

/** Kinds of entry that a record identifies, with their names in a sentence. */
export const ENTRIES = {
  person: m.meaning_person,
  station: m.meaning_station,
  'load-station': m.meaning_loadStation,
  'fuel-station': m.meaning_fuelStation,
  'water-station': m.meaning_waterStation,
  'loading-limit': m.meaning_loadingLimit,
  category: m.meaning_category,
  configuration: m.meaning_configuration,
  'energy-store': m.meaning_energyStore,
  'equipment-item': m.meaning_equipmentItem,
  meter: m.meaning_meter,
  counter: m.meaning_counter,
  job: m.meaning_job,
  modification: m.meaning_modification,
  flight: m.meaning_flight,
  task: m.meaning_task,
  finding: m.meaning_finding,
  part: m.meaning_part,
  opening: m.meaning_opening,
  attachment: m.meaning_attachment,
  certificate: m.meaning_certificate,
  source: m.meaning_source,
  bus: m.meaning_bus,
  load: m.meaning_load,
  circuit: m.meaning_circuit,
  connector: m.meaning_connector,
  'wiring-point': m.meaning_wiringPoint,
  'found-wire': m.foundWire,
  antenna: m.meaning_antenna,
  device: m.meaning_device,
  bulletin: m.bulletin,
  'due-line': m.meaning_dueLine,
  scale: m.meaning_scale,
  'weighing-point': m.meaning_weighingPoint,
} as const;
export type EntryKind = keyof typeof ENTRIES;

/**
 * Name of a field in a sentence: a message, of which `entry` identifies the part around it; or one message for each
 * value of that identifier.
 */
export type Naming = Name | Readonly<Record<string, Name>>;
export type Name = Message | Message<{ entry: Value }>;

/** Identifier by which other parts of the record refer to an entry. */
export interface IdentifierMeaning {
  kind: 'identifier';
  /** Kinds that it identifies; the first names it in a sentence. */
  of: readonly [EntryKind, ...EntryKind[]];
  /** Reason for which DUPLICATE_ID accepts the same identifier on another entry of the same list. */
  repeatable?: string;
  /** Set if it is also printed as text: the number of a bulletin may have any characters. */
  isText?: true;
}

/** Authorisation that a person needs, and the day on which it must be valid. */
export interface Authority {
  scope: Scope | { field: string };
  /** Times of which the first stated one gives the day, named as in the bounds of a timestamp; or the time of the assessment. */
  on: readonly string[] | 'assessment';
  /** Required only if a field of the same part has this value. */
  where?: Readonly<Record<string, string>>;
}

/** A person of the record, by identifier. */
export interface PersonMeaning {
  kind: 'person';
  /** Role of the person in that field. */
  doing: Naming;
  authority?: Authority;
}

/** An entry of another part of the record, by identifier. */
export interface ReferenceMeaning {
  kind: 'reference';
  to: readonly [EntryKind, ...EntryKind[]];
  /** Name of the target in a sentence, if it can be of several kinds. */
  called?: Message;
  /** Part of the record without which no target exists, so that any name is accepted. */
  unlessAbsent?: string;
  /** Name of an entry in the list of the reference, if only one of them may refer to the same target. */
  once?: Message;
  /** Code of the finding on a dangling reference, if a separate rule reports it. */
  code?: string;
}

/** A timestamp. */
export interface TimestampMeaning {
  kind: 'timestamp';
  /** Event of that time. */
  event: Naming;
  /**
   * Times that it may not lie before, and may not lie after: a path from the top of the record, or a field of the
   * nearest part around it that has it. A missing time sets no bound.
   */
  after: readonly string[];
  before: readonly string[];
  /** A day that excuses a time before the arrival: the day lies before the arrival, and not before that time. */
  earlierUntil?: string;
  /** Reason for which it may lie before the arrival, after the end of work, in the future. */
  early?: string;
  late?: string;
  future?: string;
}

/** Date of an event before the record was made. */
export interface PastDateMeaning {
  kind: 'past-date';
  event: Naming;
  /** Code of the finding on a date in the future, if a separate rule reports it. */
  code?: string;
  /** Dates or times that it may not lie before, and may not lie after, named as those of a timestamp; days are compared. */
  after?: readonly string[];
  before?: readonly string[];
}

/** An arm from the datum. */
export interface ArmMeaning {
  kind: 'arm';
  quantity: 'arm';
  /** Thing with that arm (default: the name of the nearest part around it). */
  of?: Naming;
  /** Reason for which it may lie outside the airframe. */
  outside?: string;
}

/** A number in the unit that the record declares for its quantity. */
export interface QuantityMeaning {
  kind: 'quantity';
  quantity: Quantity;
}

/** Text printed exactly as written. */
export interface TextMeaning {
  kind: 'text';
}

/** A part, and the field that names it in a sentence (default: its identifier). */
export interface PartMeaning {
  kind: 'part';
  calledBy: string;
}

export type Meaning =
  | IdentifierMeaning
  | PersonMeaning
  | ReferenceMeaning
  | TimestampMeaning
  | PastDateMeaning
  | ArmMeaning
  | QuantityMeaning
  | TextMeaning
  | PartMeaning;

/** Meanings of the fields of the record, in addition to title and description, which zod's own registry has. */
const MEANINGS = new WeakMap<Schema, Meaning>();

/** Returns the same schema, with its meaning. */
export function meaning<Field extends z.ZodType>(field: Field, means: Meaning): Field {
  MEANINGS.set(field, means);
  return field;
}

/** Returns the meaning of a schema; undefined for a plain value. */
export function meaningOf(schema: Schema): Meaning | undefined {
  return MEANINGS.get(schema);
}

/** Returns the quantity whose unit the record declares for a number. */
export function quantityOf(schema: Schema): Quantity | undefined {
  return quantityIn(meaningOf(schema));
}

/** Returns the quantity in a meaning. */
export function quantityIn(means: Meaning | undefined): Quantity | undefined {
  return means !== undefined && 'quantity' in means ? means.quantity : undefined;
}
