import type { EntryKind } from '../../../worker/core/record/meaning.ts';
import { type Json, type JsonPart, type Place, valueAt } from './place.ts';
import { randomOf, sampled } from './random.ts';

/** Ways in which a record goes wrong at the keyboard. */
export const OPERATORS = [
  'left out',
  'two left out',
  'digits swapped',
  'digit changed',
  'sign',
  'times 10',
  'tenth',
  'other unit',
  '-400 d',
  '-1 d',
  '-1 h',
  '+1 h',
  '+1 d',
  '+400 d',
  'letters swapped',
  'letter changed',
  'flipped',
  'choice',
  'person',
  'reference',
  'doubled',
  'reordered',
  'renamed',
] as const;
export type Operator = (typeof OPERATORS)[number];

/** A change of a record at one place; `to` is undefined where something is left out. */
export interface Change {
  place: Place;
  operator: Operator;
  to?: Json;
  /** The other place of two that are left out together. */
  also?: Place;
}

/** What a change may put in: the identifiers of the record by what they identify, and its people. */
export interface Names {
  ids: ReadonlyMap<EntryKind, readonly string[]>;
  people: readonly string[];
}

const MOST_OTHERS = 3;

/** Every change that fits what a place is. */
export function changesAt(place: Place, names: Names): Change[] {
  const values = [...ofShape(place), ...ofValue(place, names)];
  return values
    .filter(([, to]) => to !== place.value && !Number.isNaN(to))
    .map(([operator, to]) => (to === undefined ? { place, operator } : { place, operator, to }));
}

type Made = readonly [Operator, Json?];

function ofShape({ isOptional, isEntry, isKeyed, shape, value }: Place): Made[] {
  const isLong = shape === 'list' && (value as Json[]).length > 1;
  return [
    ...(isOptional ? [['left out'] as const] : []),
    ...(isEntry ? [['doubled', null] as const] : []),
    ...(isLong && isKeyed ? [['reordered', (value as Json[]).toReversed()] as const] : []),
  ];
}

function ofValue(place: Place, names: Names): Made[] {
  const { value, means, choices, format, shape, path } = place;
  if (shape !== 'value') return [];
  if (typeof value === 'boolean') return [['flipped', !value]];
  if (typeof value === 'number') return path[0] === 'schemaVersion' ? [] : ofNumber(value, place);
  if (typeof value !== 'string') return [];
  const others = (from: readonly string[]): string[] =>
    sampled(
      from.filter((one) => one !== value),
      MOST_OTHERS,
      path.join('/'),
    );
  if (choices.length > 0) return others(choices).map((to) => ['choice', to]);
  if (format) return ofTime(value, format);
  if (means?.kind === 'person') return others(names.people).map((to) => ['person', to]);
  if (means?.kind === 'reference') {
    const known = means.to.flatMap((kind) => names.ids.get(kind) ?? []);
    return others([...new Set(known)]).map((to) => ['reference', to]);
  }
  if (means?.kind === 'identifier') return [['renamed', mistyped(value, path.join('/')) ?? `${value}x`]];
  return ofText(value, path.join('/'));
}

function ofNumber(value: number, { means, path }: Place): Made[] {
  const quantity = means && 'quantity' in means ? means.quantity : undefined;
  const units = {
    mass: [2.204_62, 0.453_592],
    arm: [25.4, 1 / 25.4],
    volume: [3.785_41],
    density: [2.204_62],
    flow: [3.785_41],
    moment: [25.4],
  };
  const swapped = digitsSwapped(value);
  const changed = digitChanged(value, path.join('/'));
  return [
    ...(swapped === undefined ? [] : [['digits swapped', swapped] as const]),
    ['digit changed', changed],
    ...(value === 0
      ? []
      : ([
          ['sign', -value],
          ['times 10', shifted(value, 10)],
          ['tenth', shifted(value, 0.1)],
        ] as const)),
    ...(quantity && value !== 0
      ? (units[quantity as keyof typeof units] ?? []).map((by) => ['other unit', rounded(value * by)] as const)
      : []),
  ];
}

const rounded = (value: number): number => Number(value.toPrecision(5));
const shifted = (value: number, by: number): number => Number((value * by).toPrecision(12));

/** The first two neighbouring digits that differ change places. */
function digitsSwapped(value: number): number | undefined {
  const text = String(value);
  for (let at = text.length - 2; at >= 0; at--) {
    const [a, b] = [text[at] ?? '', text[at + 1] ?? ''];
    if (/\d/.test(a) && /\d/.test(b) && a !== b) return Number(text.slice(0, at) + b + a + text.slice(at + 2));
  }
  return undefined;
}

/** One digit is another, the first ones as often as the last. */
function digitChanged(value: number, seed: string): number {
  const random = randomOf(seed);
  const text = String(value);
  const places = [...text].flatMap((letter, index) => (/\d/.test(letter) ? [index] : []));
  const at = places[Math.floor(random() * places.length)] ?? 0;
  const digit = (Number(text[at]) + 1 + Math.floor(random() * 9)) % 10;
  return Number(text.slice(0, at) + digit + text.slice(at + 1));
}

const HOUR_MS = 3_600_000;
const MOVES = [
  ['-400 d', -400 * 24],
  ['-1 d', -24],
  ['-1 h', -1],
  ['+1 h', 1],
  ['+1 d', 24],
  ['+400 d', 400 * 24],
] as const;

function ofTime(value: string, format: 'date' | 'date-time'): Made[] {
  const moves = format === 'date' ? MOVES.filter(([, hours]) => Math.abs(hours) >= 24) : MOVES;
  return moves.map(([operator, hours]) => [operator, moved(value, hours)]);
}

/** A date or a time so many hours later, with the same offset from UTC. */
function moved(value: string, hours: number): string {
  const offset = value.length > 10 ? value.slice(19) : '';
  const local = Date.parse(`${value.slice(0, 19)}${value.length > 10 ? 'Z' : ''}`);
  const text = new Date(local + hours * HOUR_MS).toISOString();
  return value.length > 10 ? text.slice(0, 19) + offset : text.slice(0, 10);
}

function ofText(value: string, seed: string): Made[] {
  const swapped = lettersSwapped(value, seed);
  const changed = mistyped(value, seed);
  return [
    ...(swapped === undefined ? [] : [['letters swapped', swapped] as const]),
    ...(changed === undefined ? [] : [['letter changed', changed] as const]),
  ];
}

function lettersSwapped(value: string, seed: string): string | undefined {
  const random = randomOf(seed);
  const places = [...value].flatMap((letter, index) => {
    const next = value[index + 1];
    return next !== undefined && next !== letter && /\w/.test(letter) && /\w/.test(next) ? [index] : [];
  });
  const at = places[Math.floor(random() * places.length)];
  return at === undefined
    ? undefined
    : value.slice(0, at) + (value[at + 1] ?? '') + (value[at] ?? '') + value.slice(at + 2);
}

/** One digit is another; undefined for a text without digits. */
function mistyped(value: string, seed: string): string | undefined {
  const random = randomOf(seed);
  const places = [...value].flatMap((letter, index) => (/\d/.test(letter) ? [index] : []));
  const at = places[Math.floor(random() * places.length)];
  if (at === undefined) return undefined;
  const digit = (Number(value[at]) + 1 + Math.floor(random() * 9)) % 10;
  return value.slice(0, at) + digit + value.slice(at + 1);
}

/** Changes a record in place; returns the way back. */
export function apply(record: Json, change: Change): () => void {
  const undo = applyAt(record, change.place, change);
  const undoAlso = change.also && applyAt(record, change.also, { operator: 'left out' });
  return () => {
    undoAlso?.();
    undo();
  };
}

function applyAt(record: Json, { path }: Place, { operator, to }: Pick<Change, 'operator' | 'to'>): () => void {
  const parent = valueAt(record, path.slice(0, -1));
  const last = path.at(-1) ?? '';
  if (Array.isArray(parent)) {
    const before = [...parent];
    const index = Number(last);
    if (operator === 'doubled') parent.splice(index, 0, structuredClone(parent[index] ?? null));
    else if (to === undefined) parent.splice(index, 1);
    else parent[index] = to;
    return () => {
      parent.splice(0, parent.length, ...before);
    };
  }
  const part = parent as JsonPart;
  const before = { ...part };
  if (to === undefined) delete part[last];
  else part[last] = to;
  return () => {
    for (const key of Object.keys(part)) delete part[key];
    Object.assign(part, before);
  };
}
