import * as z from 'zod';
import { LIMITS } from '../limits.ts';
import { nearest } from './nearest.ts';
import { pointer } from './pointer.ts';
import { VisitRecord } from './record.ts';
import { nodeOf, type Schema, type SchemaNode, withoutOptional } from './schema-node.ts';
import { presentPath, SCHEMA_VERSION, versionOf } from './upgrades.ts';

// A `RecordIssue` has the shape of a `Finding` of the release check, but not its type: the record must not know the
// rules. The service lists both under `findings`.

type SchemaIssueCode = 'RECORD_KEY_UNKNOWN' | 'RECORD_FIELD_MISSING' | 'RECORD_TYPE_WRONG' | 'RECORD_VALUE_WRONG';
type StandingIssueCode = 'STANDING_FILE_UNKNOWN' | 'STANDING_UNITS_DIFFER' | 'STANDING_ENTRY_UNKNOWN';

/** Reason for which a record cannot be read: location, error and remedy. */
export interface RecordIssue<Code = SchemaIssueCode | StandingIssueCode> {
  code: Code;
  severity: 'blocks';
  pointer: string;
  sentence: string;
  remedy: string;
}

/** Reason for which a record does not fit the schema. */
type SchemaIssue = RecordIssue<SchemaIssueCode>;

type ZodIssue = z.core.$ZodIssue;

/** A record in its forms. */
export interface Forms {
  /** In the present version. */
  input: unknown;
  /** As posted: target of the pointers. */
  posted: unknown;
  /** Path in the record as posted of a path in the present version. */
  pathAsPosted(path: readonly PropertyKey[]): readonly PropertyKey[];
}

/** Returns every way in which a value fails the record schema, each with a JSON pointer, up to `LIMITS.recordIssues`. */
export function recordIssues(error: z.ZodError, forms: Forms): SchemaIssue[] {
  const issues: SchemaIssue[] = [];
  for (const issue of error.issues) {
    const left = LIMITS.recordIssues - issues.length;
    if (left === 0) break;
    issues.push(...issuesOf(issue, forms, left));
  }
  return issues;
}

// Only reported issues get a sentence: the search for the nearest known field runs for each unknown one.
function issuesOf(issue: ZodIssue, forms: Forms, most: number): SchemaIssue[] {
  const { input, pathAsPosted } = forms;
  if (issue.code === 'unrecognized_keys') {
    const node = nodeOf(schemaAt(issue.path, input) ?? VisitRecord);
    const known = node.kind === 'part' ? Object.keys(node.fields) : [];
    return issue.keys.slice(0, most).map((key) => unknownKey(issue.path, key, { known, forms }));
  }
  const value = valueAt(input, issue.path);
  const place = { severity: 'blocks', pointer: pointer(...pathAsPosted(issue.path)) } as const;
  const title = z.globalRegistry.get(schemaAt(issue.path, input) ?? VisitRecord)?.title ?? 'field';
  if (value === undefined) {
    const sentence = `Cannot read the record: ${title} (${place.pointer}) must be given`;
    return [{ code: 'RECORD_FIELD_MISSING', ...place, sentence, remedy: `Add it: ${meaningAt(issue.path, input)}` }];
  }
  const code = issue.code === 'invalid_type' ? 'RECORD_TYPE_WRONG' : 'RECORD_VALUE_WRONG';
  const sentence = `Cannot read the record: ${title} (${place.pointer}) must be ${wanted(issue, input)}: current value is ${shown(value)}`;
  return [{ code, ...place, sentence, remedy: `Correct it: ${meaningAt(issue.path, input)}` }];
}

/** @param known the fields there are in the present version */
function unknownKey(
  path: readonly PropertyKey[],
  key: string,
  { known, forms }: { known: readonly string[]; forms: Forms },
): SchemaIssue {
  const { posted, pathAsPosted } = forms;
  const namePosted = (name: string): string => String(pathAsPosted([...path, name]).at(-1));
  const name = namePosted(key);
  const at = pathAsPosted(path);
  return {
    code: 'RECORD_KEY_UNKNOWN',
    severity: 'blocks',
    pointer: pointer(...at, name),
    sentence: `Cannot read the record: ${pointer(...at) || 'the record'} has no field ${shown(name)}`,
    remedy: remedyOf(name, { path, known, posted, namePosted }),
  };
}

interface Around {
  path: readonly PropertyKey[];
  known: readonly string[];
  posted: unknown;
  namePosted(name: string): string;
}

/** The name of the field in the version of the record; else the nearest. */
function remedyOf(name: string, { path, known, posted, namePosted }: Around): string {
  const present = known.includes(name) ? name : String(presentPath([...path, name]).at(-1));
  if (known.includes(present))
    return `Write ${shown(namePosted(present))}, its name in schemaVersion ${versionOf(posted) ?? SCHEMA_VERSION}`;
  const fields = known.map(namePosted);
  const near = nearest(name, fields);
  return near ? `Write ${shown(near)}, or remove it` : `Remove it; the fields here are ${fields.join(', ')}`;
}

function wanted(issue: ZodIssue, input: unknown): string {
  if (issue.code === 'invalid_type') return `of type ${issue.expected}`;
  if (issue.code === 'invalid_value') return `one of ${issue.values.map(shown).join(', ')}`;
  if (issue.code === 'too_big') return `at most ${issue.maximum}${issue.origin === 'number' ? '' : ' long'}`;
  if (issue.code === 'too_small') return `at least ${issue.minimum}${issue.origin === 'number' ? '' : ' long'}`;
  if (issue.code === 'invalid_union')
    return `one of the kinds ${kindsAt(issue.path.slice(0, -1), input).map(shown).join(', ')}`;
  return issue.message;
}

function kindsAt(path: readonly PropertyKey[], input: unknown): unknown[] {
  const node = nodeOf(schemaAt(path, input) ?? VisitRecord);
  return node.kind === 'variants' ? [...node.variants.keys()] : [];
}

const SHOWN_LENGTH = 60;

function shown(value: unknown): string {
  const text = JSON.stringify(beginning(value)) ?? String(value);
  return text.length > SHOWN_LENGTH ? `${text.slice(0, SHOWN_LENGTH - 3)}…` : text;
}

/** Returns as much of a value as can be shown: each entry takes min. two characters. */
function beginning(value: unknown): unknown {
  if (typeof value === 'string') return value.slice(0, SHOWN_LENGTH);
  if (Array.isArray(value)) return value.slice(0, SHOWN_LENGTH / 2);
  return value;
}

function meaningAt(path: readonly PropertyKey[], input: unknown): string {
  const meta = z.globalRegistry.get(schemaAt(path, input) ?? VisitRecord);
  const example = (meta?.examples as unknown[] | undefined)?.[0];
  const description = meta?.description ?? 'see the schema';
  return example === undefined ? description : `${description}; for example ${shown(example)}`;
}

function valueAt(input: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>((at, step) => (at as Record<PropertyKey, unknown> | undefined)?.[step], input);
}

/** Returns the schema of the field at a path, following the kinds that the input itself names. */
function schemaAt(path: readonly PropertyKey[], input: unknown): Schema | undefined {
  let schema: Schema | undefined = VisitRecord;
  let value = input;
  for (const step of path) {
    schema = schema && fieldOf(nodeOf(chosen(schema, value)), step);
    value = (value as Record<PropertyKey, unknown> | undefined)?.[step];
  }
  return schema && chosen(schema, value);
}

function fieldOf(node: SchemaNode, step: PropertyKey): Schema | undefined {
  if (typeof step === 'number') return node.kind === 'list' ? node.item : undefined;
  return node.kind === 'part' ? node.fields[String(step)] : undefined;
}

/** Returns the variant that the value names; the schema itself if it names none. */
function chosen(schema: Schema, value: unknown): Schema {
  const node = nodeOf(schema);
  if (node.kind !== 'variants') return withoutOptional(schema);
  return node.variants.get((value as Record<string, unknown> | undefined)?.[node.by]) ?? withoutOptional(schema);
}
