import * as z from 'zod';
import { type Meaning, meaningOf } from '../../../worker/core/record/meaning.ts';
import { VisitRecord } from '../../../worker/core/record/record.ts';
import { nodeOf, type Schema, withoutOptional } from '../../../worker/core/record/schema-node.ts';

export type Json = null | boolean | number | string | Json[] | JsonPart;
export interface JsonPart {
  [field: string]: Json;
}

/** Something that a record states: a value, a list, or a part, with what the schema says of it. */
export interface Place {
  path: readonly (string | number)[];
  /** The path with `*` for positions in lists, as in `aircraft/seats` or `people/*`. */
  pattern: string;
  value: Json;
  shape: 'value' | 'list' | 'part';
  means: Meaning | undefined;
  /** May be left out: an optional field, or an entry of a list. */
  isOptional: boolean;
  isEntry: boolean;
  /** Of a list: its entries have identifiers. */
  isKeyed: boolean;
  /** The values of a choice; empty for any other field. */
  choices: readonly string[];
  format: 'date' | 'date-time' | undefined;
}

interface Step {
  path: readonly (string | number)[];
  isOptional: boolean;
  isEntry: boolean;
}

/** Everything that a record states, in the order of the schema. */
export function placesOf(record: Json): Place[] {
  const places: Place[] = [];
  walk(VisitRecord, record, { path: [], isOptional: false, isEntry: false }, places);
  return places.slice(1);
}

function walk(field: Schema, value: Json, step: Step, places: Place[]): void {
  const schema = withoutOptional(field);
  const node = nodeOf(schema);
  const inner = node.kind === 'variants' ? node.variants.get((value as JsonPart)[node.by]) : schema;
  if (!inner) return;
  const shaped = nodeOf(inner);
  places.push(placeOf(inner, shaped.kind === 'list' || shaped.kind === 'part' ? shaped.kind : 'value', value, step));
  if (shaped.kind === 'list') {
    for (const [index, entry] of (value as Json[]).entries())
      walk(shaped.item, entry, { path: [...step.path, index], isOptional: true, isEntry: true }, places);
  } else if (shaped.kind === 'part') {
    for (const [key, of] of Object.entries(shaped.fields)) {
      const stated = (value as JsonPart)[key];
      if (stated === undefined) continue;
      walk(of, stated, { path: [...step.path, key], isOptional: of instanceof z.ZodOptional, isEntry: false }, places);
    }
  }
}

function placeOf(schema: Schema, shape: Place['shape'], value: Json, step: Step): Place {
  const format = (schema as z.ZodType).meta?.()?.format;
  const isKeyed =
    shape === 'list' && (value as Json[]).some((entry) => typeof entry === 'object' && entry !== null && 'id' in entry);
  return {
    ...step,
    pattern: patternOf(step.path),
    value,
    shape,
    means: meaningOf(schema),
    isKeyed,
    choices: schema instanceof z.ZodEnum ? schema.options.map(String) : [],
    format: format === 'date' || format === 'date-time' ? format : undefined,
  };
}

/** A path with `*` for positions in lists. */
export function patternOf(path: readonly (string | number)[]): string {
  return path.map((step) => (typeof step === 'number' ? '*' : step)).join('/');
}

/** The value at a path; undefined where there is none. */
export function valueAt(record: Json, path: readonly (string | number)[]): Json | undefined {
  return path.reduce<Json | undefined>(
    (at, step) => (typeof at === 'object' && at !== null ? (at as JsonPart)[step] : undefined),
    record,
  );
}
