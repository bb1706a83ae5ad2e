import { withNames } from '../../calc/open-items/carry-over.ts';
import { isSame, type OpenItem } from '../../calc/open-items/open-item.ts';
import * as m from '../../text/generated/messages.ts';
import type { PackContext } from '../context.ts';
import { numberOf } from '../pack-number.ts';
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

/**
 * The name that a reader finds an item by, for the life of the aircraft. What first stands in a draft has none yet, and what a correction
 * brings is told apart from what stood in the issue before only by the archive: there it is its identifier in the record.
 */
export function itemName({ results, identity }: PackContext, open: OpenItem): string {
  if (open.item !== undefined || identity?.issue !== '1') return open.item ?? open.id;
  const { standing: all } = results.open;
  const index = all.findIndex((other) => other.item === undefined && isSame(other, open) && other.id === open.id);
  const naming = { issue: numberOf(identity.pack), at: identity.issuedAt, names: [] };
  return withNames(all, naming)[index]?.item ?? open.id;
}

/** The name of a finding of the record: as an open item where it stands open, else its identifier. */
export function findingName(context: PackContext, id: string): string {
  const open = standing(context, 'deferral', 'watch').find((item) => item.id === id && !isHeld(context, item));
  return open ? itemName(context, open) : id;
}

/** What an earlier pack calls so, and this record has no entry for. */
const isHeld = ({ results }: PackContext, item: OpenItem): boolean => results.open.held.includes(item);

/** By when something that stands open is to be done, on whichever clock comes first; undefined where nobody set a limit. */
export function openUntil(
  { visit, fmt }: Pick<PackContext, 'visit' | 'fmt'>,
  { until, of, meter }: Pick<OpenItem, 'until' | 'of' | 'meter'>,
): string | undefined {
  const landings = until.landings === undefined ? undefined : landingsText(until.landings, fmt);
  return eitherOf(fmt, dueLimit(visit, { date: until.date, hours: until.hours, of, meter }, fmt), landings);
}

/** Limitations in force, those of earlier packs that nobody lifted among them, and flight tests that earlier packs still owe. */
export function limitationTexts(context: PackContext): string[] {
  const { fmt } = context;
  return [
    ...standing(context, 'limitation').map(({ text }) => text),
    ...heldOver(context, 'test').map((open) =>
      fmt.text(m.openItems_flightTestOwedSince, { context: itemName(context, open), open: open.text }),
    ),
  ];
}
