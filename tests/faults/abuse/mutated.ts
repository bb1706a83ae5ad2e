import type { Chance } from './chance.ts';
import { NASTY_TEXT, NASTY_TOKENS, NASTY_VALUES } from './nasty.ts';

type Container = Record<string, unknown> | unknown[];

/** A place in a JSON value: what holds it, and under which key. */
interface Place {
  parent: Container;
  key: string | number;
}

function placesIn(value: unknown): Place[] {
  if (typeof value !== 'object' || value === null) return [];
  const parent = value as Container;
  const keys = Array.isArray(parent) ? [...parent.keys()] : Object.keys(parent);
  return keys.flatMap((key) => [{ parent, key }, ...placesIn(Reflect.get(parent, key))]);
}

/** Stands for a token that only text can hold, until the value is text. */
const MARK = '@@token@@';

type Mutation = (place: Place, chance: Chance) => void;

const replaced =
  (value: (chance: Chance) => unknown): Mutation =>
  ({ parent, key }, chance) => {
    Reflect.set(parent, key, value(chance));
  };

const nested = (levels: number): unknown => {
  let value: unknown = 1;
  for (let level = 0; level < levels; level++) value = level % 2 ? [value] : { a: value };
  return value;
};

const MUTATIONS: readonly Mutation[] = [
  replaced((chance) => chance.oneOf(NASTY_VALUES)),
  replaced((chance) => chance.oneOf(NASTY_TEXT)),
  replaced((chance) => chance.oneOf(NASTY_TEXT) + chance.oneOf(NASTY_TEXT)),
  replaced((chance) => chance.number(-1e9, 1e9)),
  replaced((chance) => nested(chance.integer(1, 60))),
  replaced(() => MARK),
  ({ parent, key }) => {
    if (Array.isArray(parent)) parent.splice(Number(key), 1);
    else delete parent[key as string];
  },
  ({ parent, key }, chance) => {
    if (Array.isArray(parent)) parent.splice(Number(key), 0, ...Array(chance.integer(1, 30)).fill(parent[Number(key)]));
    else parent[chance.oneOf(NASTY_TEXT)] = parent[key as string];
  },
  ({ parent, key }) => {
    const value: unknown = Reflect.get(parent, key);
    Reflect.set(parent, key, Array.isArray(value) ? { ...value } : [value]);
  },
  ({ parent, key }, chance) => {
    const value: unknown = Reflect.get(parent, key);
    if (typeof value === 'number') Reflect.set(parent, key, value * chance.oneOf([-1, 0, 1e-9, 1.000001, 1e6, 1e12]));
    if (typeof value === 'string') Reflect.set(parent, key, value + chance.oneOf(NASTY_TEXT));
  },
];

/** The text of a record with a few things in it changed for the worse. */
export function mutated(record: unknown, chance: Chance): string {
  const copy: unknown = structuredClone(record);
  const changes = chance.integer(1, 4);
  for (let change = 0; change < changes; change++) {
    const places = placesIn(copy);
    if (places.length > 0) chance.oneOf(MUTATIONS)(chance.oneOf(places), chance);
  }
  const text = JSON.stringify(copy).replaceAll(`"${MARK}"`, () => chance.oneOf(NASTY_TOKENS));
  return chance.isLucky(0.1) ? brokenText(text, chance) : text;
}

/** Text that is hardly JSON any more: cut off, doubled keys, strange bytes. */
function brokenText(text: string, chance: Chance): string {
  const at = chance.integer(0, text.length);
  const colon = text.indexOf('"', at);
  const breaks = [
    () => text.slice(0, at),
    () => text.slice(0, at) + chance.oneOf(NASTY_TOKENS) + text.slice(at),
    () => `${text}${text}`,
    () =>
      text.replace(
        '{',
        `{${chance.oneOf(['"visit":1,', '"__proto__":{"isReleasable":true},', '"units":{},"units":{},'])}`,
      ),
    () => `${'['.repeat(chance.integer(1, 5_000))}${text}`,
    () =>
      colon < 0 ? text : `${text.slice(0, colon)}"${'k'.repeat(chance.integer(1, 3_000))}":1,${text.slice(colon)}`,
  ];
  return chance.oneOf(breaks)();
}
