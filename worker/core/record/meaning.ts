import type * as z from 'zod';
import * as m from '../text/generated/messages.ts';
import type { Message, Value } from '../text/message.ts';
import type { Quantity } from '../units/quantity.ts';
import type { Schema } from './schema-node.ts';
import type { Scope } from './scopes.ts';

/** The kinds of entry that a record identifies, and what a sentence calls each. */
export const ENTRIES = {
  person: m.meaning_person,
  station: m.meaning_station,
  'load-station': m.meaning_loadStation,
  'fuel-station': m.meaning_fuelStation,
  'loading-limit': m.meaning_loadingLimit,
  'equipment-item': m.meaning_equipmentItem,
  meter: m.meaning_meter,
  job: m.meaning_job,
  modification: m.meaning_modification,
  task: m.meaning_task,
  finding: m.meaning_finding,
  part: m.meaning_part,
  attachment: m.meaning_attachment,
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
 * How a sentence names a field: a message, of which `entry` is what identifies the part around it; or one message for each value of
 * that.
 */
export type Naming = Name | Readonly<Record<string, Name>>;
export type Name = Message | Message<{ entry: Value }>;

/** The name by which other parts of the record refer to an entry. */
export interface IdentifierMeaning {
  kind: 'identifier';
  /** What it identifies; the first is what a sentence calls it. */
  of: readonly [EntryKind, ...EntryKind[]];
  /** Why an entry of the same list may have the same identifier as far as DUPLICATE_ID is concerned. */
  repeatable?: string;
  /** Whether it is text to be printed, too: the number of a bulletin may have any characters. */
  isText?: true;
}

/** What a person must be authorised for at some place, and on which day. */
export interface Authority {
  scope: Scope | { field: string };
  /** Times of which the first that is stated gives the day: as in the bounds of a timestamp; or the moment of the assessment. */
  on: readonly string[] | 'assessment';
  /** Needed only where a field of the same part has this value. */
  where?: Readonly<Record<string, string>>;
}

/** A person of the record, by identifier. */
export interface PersonMeaning {
  kind: 'person';
  /** What the person does there. */
  doing: Naming;
  authority?: Authority;
}

/** An entry of another part of the record, by identifier. */
export interface ReferenceMeaning {
  kind: 'reference';
  to: readonly [EntryKind, ...EntryKind[]];
  /** What a sentence calls the target, where there are several kinds. */
  called?: Message;
  /** Part of the record without which there is nothing to refer to, so that any name is taken. */
  unlessAbsent?: string;
  /** What an entry of its own list is called that may refer to the same target only once. */
  once?: Message;
  /** Code of the finding on a dangling reference, where a rule of its own says it. */
  code?: string;
}

/** A point in time. */
export interface TimestampMeaning {
  kind: 'timestamp';
  /** What happened then. */
  event: Naming;
  /**
   * Times that it may not lie before, and may not lie after: a path from the top of the record, or a field of the nearest part around
   * it that has it. What is not stated binds nothing.
   */
  after: readonly string[];
  before: readonly string[];
  /** A day that excuses a time before the arrival: itself before the arrival, and not before that time. */
  earlierUntil?: string;
  /** Why it may lie before the arrival, after the end of work, in the future. */
  early?: string;
  late?: string;
  future?: string;
}

/** A day on which something had happened when the record was made. */
export interface PastDateMeaning {
  kind: 'past-date';
  event: Naming;
  /** Code of the finding on a day in the future, where a rule of its own says it. */
  code?: string;
}

/** An arm from the datum. */
export interface ArmMeaning {
  kind: 'arm';
  quantity: 'arm';
  /** What has that arm; the name of the nearest part around it, if left out. */
  of?: Naming;
  /** Why it may lie outside the airframe. */
  outside?: string;
}

/** A number in the unit that the record declares for its quantity. */
export interface QuantityMeaning {
  kind: 'quantity';
  quantity: Quantity;
}

/** Text to be printed as it was written. */
export interface TextMeaning {
  kind: 'text';
}

/** A part, and which of its fields a sentence calls it by; its identifier, if left out. */
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

/** What the fields of the record mean, beside title and description, which zod's own registry has. */
const MEANINGS = new WeakMap<Schema, Meaning>();

/** The same schema, with its meaning. */
export function meaning<Field extends z.ZodType>(field: Field, means: Meaning): Field {
  MEANINGS.set(field, means);
  return field;
}

/** What a schema means; undefined for one that is a value and no more. */
export function meaningOf(schema: Schema): Meaning | undefined {
  return MEANINGS.get(schema);
}

/** The quantity whose unit the record declares for a number. */
export function quantityOf(schema: Schema): Quantity | undefined {
  const means = meaningOf(schema);
  return means !== undefined && 'quantity' in means ? means.quantity : undefined;
}
