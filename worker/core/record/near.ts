import { dateOf } from '../units/calendar.ts';
import type { Place } from './record-index.ts';

/** A text of the record, and its path. */
export interface Stated {
  value: string;
  path: readonly (string | number)[];
}

/**
 * Returns the text at a path such as `foundAt` or `visit.arrivedAt`, resolved from a field of the record: from the
 * nearest part around it that has a text of that name.
 */
export function near({ around, path }: Pick<Place, 'around' | 'path'>, name: string): Stated | undefined {
  const steps = name.split('.');
  for (const { value, depth } of around.toReversed()) {
    const found = steps.reduce<unknown>((at, step) => (at as Record<string, unknown> | undefined)?.[step], value);
    if (typeof found === 'string') return { value: found, path: [...path.slice(0, depth), ...steps] };
  }
  return undefined;
}

/** Returns the day of the first stated text of several. */
export function firstDay(place: Pick<Place, 'around' | 'path'>, names: readonly string[]): string | undefined {
  const first = names.map((name) => near(place, name)).find((stated) => stated !== undefined);
  return first && dateOf(first.value);
}
