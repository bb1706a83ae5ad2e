import type { Name, Naming } from '../record/meaning.ts';
import type { Around, Place } from '../record/record-index.ts';
import type { Value } from '../text/message.ts';
import { termOf } from '../text/terms.ts';

/**
 * Name of a field of the record in a sentence.
 *
 * @example fieldName(place.means.event, place)  // 'closing of finding F3'
 */
export function fieldName(naming: Naming, { around }: Pick<Place, 'around'>): Value {
  const identity =
    around.findLast(({ calledBy }) => calledBy !== undefined) ??
    around.findLast(({ position }) => position !== undefined);
  const message = isMessage(naming) ? naming : naming[String(statedIn(identity))];
  return message ? { message, values: { entry: identity ? called(identity) : '' } } : '';
}

function isMessage(naming: Naming): naming is Name {
  return Array.isArray(naming);
}

/** Identifies a part of the record: by a field, or by its position in the list. */
function called(part: Around): Value {
  const stated = statedIn(part);
  if (typeof stated !== 'string') return String((part.position ?? 0) + 1);
  return part.calledBy?.isChoice ? termOf(stated) : stated;
}

function statedIn(part: Around | undefined): unknown {
  return part?.calledBy && part.value[part.calledBy.key];
}

/** Name of the part with an arm: from the field, else from the nearest part around it. */
export function armName({ means, around }: Place<'arm'>): Value {
  if (means.of !== undefined) return fieldName(means.of, { around });
  const names = around.map(({ value }) => value.name).filter((name) => typeof name === 'string');
  return names.at(-1) ?? '';
}
