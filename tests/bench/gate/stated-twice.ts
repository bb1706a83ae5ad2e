import { entries, isPart } from './look.ts';
import { type Json, type JsonPart, type Place, valueAt } from './place.ts';

/** Fields that name one thing of the world, so that the same text elsewhere means the same thing. */
const NAMES = [
  'address',
  'address24',
  'addressSet',
  'airframeSerial',
  'engineSerial',
  'flightIdentity',
  'flightIdentitySet',
  'item',
  'mark',
  'model',
  'partNumber',
  'propellerSerial',
  'reference',
  'registration',
  'serial',
  'serialOrBatch',
];

/** Where a record states each name: the patterns by text. */
export type Stated = ReadonlyMap<string, ReadonlySet<string>>;

/** Lists the names of things that a record states, and where. */
export function statedIn(places: readonly Place[]): Stated {
  const stated = new Map<string, Set<string>>();
  for (const { value, pattern } of places.filter(isName)) {
    const at = stated.get(String(value)) ?? new Set();
    stated.set(String(value), at.add(pattern));
  }
  return stated;
}

const isName = ({ path, value, shape, means }: Place): boolean =>
  shape === 'value' &&
  means?.kind !== 'reference' &&
  typeof value === 'string' &&
  /\d/.test(value) &&
  NAMES.includes(String(path.at(-1)));

/** Whether another field of the record states the same name. */
export function isStatedElsewhere(stated: Stated, place: Place): boolean {
  return isName(place) && [...(stated.get(String(place.value)) ?? [])].some((pattern) => pattern !== place.pattern);
}

/**
 * Whether a field repeats what the inventory says of the item that its part names: a serial number or a mass of what
 * was taken out.
 */
export function isOfItsItem(record: Json, { path, value }: Place): boolean {
  const around = valueAt(record, path.slice(0, -1));
  const key = String(path.at(-1));
  if (!isPart(around) || typeof around.item !== 'string' || key === 'item') return false;
  const { item } = around;
  return itemsOf(record).some((one) => one !== around && one.id === item && one[key] === value);
}

function itemsOf(record: Json): JsonPart[] {
  return [
    ...entries(record, 'baseline', 'equipment'),
    ...entries(record, 'modifications').flatMap((work) => entries(work, 'changes')),
  ];
}
