import type { Json, JsonPart } from './place.ts';

/** A part of a record, empty where there is none. */
export function part(of: Json | undefined, ...way: string[]): JsonPart {
  const found = way.reduce<Json | undefined>((at, key) => (isPart(at) ? at[key] : undefined), of);
  return isPart(found) ? found : {};
}

/** The parts of a list, each with its position; empty where there is none. */
export function entries(of: Json | undefined, ...way: string[]): JsonPart[] {
  const last = way.at(-1);
  const found = last === undefined ? of : part(of, ...way.slice(0, -1))[last];
  return Array.isArray(found) ? found.filter(isPart) : [];
}

export function figure(of: JsonPart, key: string): number | undefined {
  const value = of[key];
  return typeof value === 'number' ? value : undefined;
}

export function words(of: JsonPart, key: string): string | undefined {
  const value = of[key];
  return typeof value === 'string' ? value : undefined;
}

/** The figures of a list. */
export function figures(of: JsonPart, key: string): number[] {
  const value = of[key];
  return Array.isArray(value) ? value.filter((one) => typeof one === 'number') : [];
}

export function isPart(value: Json | undefined): value is JsonPart {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
