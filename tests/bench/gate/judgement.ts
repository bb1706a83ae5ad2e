import type { Operator } from './operators.ts';
import type { Json, JsonPart } from './place.ts';

/** What a change does to a release. */
export const CLASSES = ['hurts', 'contradicts', 'free', 'nothing'] as const;
export type Class = (typeof CLASSES)[number];

/** What decided a class. */
export type Ground =
  | 'figure'
  | 'limit'
  | 'order'
  | 'person'
  | 'result'
  | 'agreement'
  | 'name'
  | 'table'
  | 'first record'
  | 'kind of field';

/** A class, what decided it, and why. */
export interface Verdict {
  is: Class;
  by: Ground;
  because: string;
}

/**
 * What an inspector says of a change at a field, by its pattern: `*` is a position in a list, `**` any way, `(a|b)` one
 * of several. `upper` and `lower` are limits: a change of an upper limit upwards hurts, and one downwards is free; of a
 * choice, one further down its list is upwards.
 */
export interface Judgement {
  at: string;
  on: readonly Operator[];
  is: Class | 'upper' | 'lower';
  because: string;
  /** Only from, or to, these values. */
  from?: readonly unknown[];
  to?: readonly unknown[];
  /** Only where this holds of the record before the change. */
  where?(change: Around): boolean;
}

/** What stands around a change in the record before it. */
export interface Around {
  record: Json;
  /** The part of the field, or the entry itself. */
  around: JsonPart;
  /** The load, of a field within one. */
  loads?: JsonPart | undefined;
  key: string;
  value?: Json;
  to?: Json | undefined;
}

export const NUMBERS: readonly Operator[] = [
  'digits swapped',
  'digit changed',
  'sign',
  'times 10',
  'tenth',
  'other unit',
];
export const TIMES: readonly Operator[] = ['-400 d', '-1 d', '-1 h', '+1 h', '+1 d', '+400 d'];
export const WORDS: readonly Operator[] = ['letters swapped', 'letter changed'];
export const OUT: readonly Operator[] = ['left out', 'two left out'];
export const LIMIT: readonly Operator[] = [...NUMBERS, ...TIMES, ...OUT];

/** Whether a pattern of a judgement covers that of a place. */
export function covers(at: string, pattern: string): boolean {
  const known =
    compiled.get(at) ?? new RegExp(`^${at.replaceAll('**', '@').replaceAll('*', '\\*').replaceAll('@', '.*')}$`);
  compiled.set(at, known);
  return known.test(pattern);
}

const compiled = new Map<string, RegExp>();
