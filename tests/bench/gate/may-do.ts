import type { PersonMeaning } from '../../../worker/core/record/meaning.ts';
import { entries, isPart, words } from './look.ts';
import { type Json, type JsonPart, type Place, valueAt } from './place.ts';

/** Fields of which the second names another person than the first. */
const SECONDS: Readonly<Record<string, string>> = {
  secondBy: 'by',
  checkedBy: 'by',
  inspectedBy: 'by',
  heldBy: 'by',
};

/** Why a person may not stand in a field; undefined if nothing speaks against it. */
export function whyNot(record: Json, place: Place, id: string, at: string): string | undefined {
  const { means, path } = place;
  if (means?.kind !== 'person') return undefined;
  const person = entries(record, 'people').find((one) => one.id === id);
  if (!person) return 'nobody of that name';
  if (isSameAsFirst(record, path, id)) return 'the same person twice, where two must look';
  const scope = scopeOf(means, valueAt(record, path.slice(0, -1)));
  if (scope === undefined) return undefined;
  if (!holds(record, person, scope)) return `not authorised for ${scope}`;
  const day = dayOf(means, record, path) ?? at.slice(0, 10);
  const until = words(person, 'validUntil');
  return until !== undefined && until < day ? 'authorisation had run out' : undefined;
}

function isSameAsFirst(record: Json, path: Place['path'], id: string): boolean {
  const last = String(path.at(-1));
  const around = valueAt(record, path.slice(0, -1));
  const outer = valueAt(record, path.slice(0, -2));
  if (path.at(-2) === 'secondInspection') return isPart(outer) && outer.by === id;
  if (!isPart(around)) return isPart(outer) && Object.keys(SECONDS).some((second) => outer[second] === id);
  const partners = Object.entries(SECONDS).flatMap(([second, first]) =>
    last === second ? [around[first]] : last === first ? [around[second]] : [],
  );
  const inspection = last === 'by' && isPart(around.secondInspection) ? [around.secondInspection.by] : [];
  return [...partners, ...inspection].some((one) => one === id || (Array.isArray(one) && one.includes(id)));
}

function scopeOf({ authority }: PersonMeaning, around: Json | undefined): string | undefined {
  if (!authority) return undefined;
  const part = isPart(around) ? around : {};
  if (!Object.entries(authority.where ?? {}).every(([field, value]) => part[field] === value)) return undefined;
  return typeof authority.scope === 'string' ? authority.scope : words(part, authority.scope.field);
}

/** Nobody inspects independently, or releases, under supervision. */
const OWN_ONLY = ['independent-inspection', 'release'];

function holds(record: Json, person: JsonPart, scope: string): boolean {
  const has = (one: JsonPart | undefined): boolean => Array.isArray(one?.scope) && one.scope.includes(scope);
  if (has(person) || OWN_ONLY.includes(scope)) return has(person);
  return has(entries(record, 'people').find((one) => one.id === person.supervisor));
}

function dayOf({ authority }: PersonMeaning, record: Json, path: Place['path']): string | undefined {
  if (!authority || authority.on === 'assessment') return undefined;
  for (const name of authority.on) {
    const steps = name.split('.');
    const bases = steps.length > 1 ? [[]] : path.map((_, length) => path.slice(0, path.length - 1 - length));
    for (const base of bases) {
      const value = valueAt(record, [...base, ...steps]);
      if (typeof value === 'string') return value.slice(0, 10);
    }
  }
  return undefined;
}

/** Who acts under an authorisation that the record does not support, counted over all fields. */
export function unauthorised(record: Json, people: readonly Place[], at: string): number {
  return people.filter((place) => {
    const id = valueAt(record, place.path);
    return typeof id === 'string' && whyNot(record, place, id, at) !== undefined;
  }).length;
}
