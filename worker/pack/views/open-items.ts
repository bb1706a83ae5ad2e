import type { OpenItem } from '../../calc/open-items/open-item.ts';
import type { PackContext } from '../context.ts';
import { landingsText } from './counts.ts';
import { dueLimit, eitherOf } from './due-limit.ts';

type Kind = OpenItem['kind'];

/** What stands open after the visit, of some kinds. */
export function standing({ results }: PackContext, ...kinds: Kind[]): OpenItem[] {
  return results.open.standing.filter(({ kind }) => kinds.includes(kind));
}

/** What of that an earlier pack left open and this record has no entry for. */
export function heldOver({ results }: PackContext, ...kinds: Kind[]): OpenItem[] {
  return results.open.held.filter(({ kind }) => kinds.includes(kind));
}

/** The name that a reader finds an item by: in the pack in which it first stands, its identifier in the record. */
export function itemName({ item, id }: OpenItem): string {
  return item ?? id;
}

/** By when something that stands open is to be done, on whichever clock comes first; undefined where nobody set a limit. */
export function openUntil(
  { visit, say }: Pick<PackContext, 'visit' | 'say'>,
  { until, of, meter }: Pick<OpenItem, 'until' | 'of' | 'meter'>,
): string | undefined {
  const landings = until.landings === undefined ? undefined : landingsText(until.landings, say);
  return eitherOf(say, dueLimit(visit, { date: until.date, hours: until.hours, of, meter }, say), landings);
}

/** Limitations in force, those of earlier packs that nobody lifted among them, and flight tests that earlier packs still owe. */
export function limitationTexts(context: PackContext): string[] {
  const { say } = context;
  return [
    ...standing(context, 'limitation').map(({ text }) => text),
    ...heldOver(context, 'test').map((open) => say.words`Flight test owed since ${itemName(open)}: ${open.text}`),
  ];
}
