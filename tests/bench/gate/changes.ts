import type { EntryKind } from '../../../worker/core/record/meaning.ts';
import { type Change, changesAt, type Names } from './operators.ts';
import { type Json, type Place, placesOf } from './place.ts';
import { sampled } from './random.ts';

/** Of each way of going wrong at each field of the schema, at most so many in one record. */
export const MOST_ALIKE = 8;
const MOST_PAIRS = 4;

export interface Changes {
  changes: Change[];
  /** Left away, because there are enough of the same. */
  sampledOut: number;
}

/** Every change of a record, or a fixed sample where many are alike. */
export function changesOf(record: Json, name: string, most: number = MOST_ALIKE): Changes {
  const places = placesOf(record);
  const names = namesIn(places);
  const all = [...places.flatMap((place) => changesAt(place, names)), ...pairsOf(places)];
  const alike = Map.groupBy(all, ({ place, operator }) => `${place.pattern} ${operator}`);
  const changes = [...alike].flatMap(([key, group]) => sampled(group, most, `${name} ${key}`));
  return { changes, sampledOut: all.length - changes.length };
}

function namesIn(places: readonly Place[]): Names {
  const ids = new Map<EntryKind, string[]>();
  for (const { means, value } of places)
    if (means?.kind === 'identifier')
      for (const kind of means.of) ids.set(kind, [...(ids.get(kind) ?? []), String(value)]);
  return { ids, people: ids.get('person') ?? [] };
}

/** Two optional fields of the same part, left out together. */
function pairsOf(places: readonly Place[]): Change[] {
  const optional = places.filter(({ isOptional, isEntry, path }) => isOptional && !isEntry && path[0] !== '$schema');
  const parts = Map.groupBy(optional, ({ path }) => path.slice(0, -1).join('/'));
  return [...parts].flatMap(([part, fields]) => {
    const pairs = fields.flatMap((place, index) =>
      fields.slice(index + 1).map((also): Change => ({ place, also, operator: 'two left out' })),
    );
    return sampled(pairs, MOST_PAIRS, part);
  });
}
