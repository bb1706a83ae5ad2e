import type { Printer } from '../text/print.ts';
import type { Naming } from '../visit/meaning.ts';
import type { Around, Place } from '../visit/record-index.ts';
import { filled } from '../words/words.ts';

/**
 * What a sentence calls a field of the record.
 *
 * @example fieldName(place.means.event, place, say)  // 'closing of finding F3'
 */
export function fieldName(naming: Naming, { around }: Pick<Place, 'around'>, say: Printer): string {
  const identity =
    around.findLast(({ calledBy }) => calledBy !== undefined) ??
    around.findLast(({ position }) => position !== undefined);
  const phrase = typeof naming === 'string' ? naming : (naming[String(statedIn(identity))] ?? '');
  return filled(say.term(phrase), [identity ? called(identity, say) : '']);
}

/** What identifies a part in the record: a field of it, or its place in its list. */
function called(part: Around, say: Printer): string {
  const stated = statedIn(part);
  if (typeof stated !== 'string') return String((part.position ?? 0) + 1);
  return part.calledBy?.isChoice ? say.term(stated) : stated;
}

function statedIn(part: Around | undefined): unknown {
  return part?.calledBy && part.value[part.calledBy.key];
}

/** What has an arm: as the field says, or the name of the nearest part around it. */
export function armName({ means, around }: Place<'arm'>, say: Printer): string {
  if (means.of !== undefined) return fieldName(means.of, { around }, say);
  const names = around.map(({ value }) => value.name).filter((name) => typeof name === 'string');
  return names.at(-1) ?? '';
}
