import { withNames } from '../../calc/open-items/carry-over.ts';
import { isSame, type OpenItem } from '../../calc/open-items/open-item.ts';
import * as m from '../../text/generated/messages.ts';
import type { PackContext } from '../context.ts';
import { numberOf } from '../pack-number.ts';
import { dueLimit } from './due-limit.ts';

type Kind = OpenItem['kind'];

/** Returns the open items of some kinds after the visit. */
export function standing({ results }: PackContext, ...kinds: Kind[]): OpenItem[] {
  return results.open.standing.filter(({ kind }) => kinds.includes(kind));
}

/** Returns those that an earlier pack left open and that have no entry in this record. */
export function heldOver({ results }: PackContext, ...kinds: Kind[]): OpenItem[] {
  return results.open.held.filter(({ kind }) => kinds.includes(kind));
}

/**
 * Returns the name of an item for the life of the aircraft. An item new in a draft has none yet, and only the archive
 * distinguishes an item new in a correction from one in the issue before: both use the identifier in the record.
 */
export function itemName({ results, identity }: PackContext, open: OpenItem): string {
  if (open.item !== undefined || identity?.issue !== '1') return open.item ?? open.id;
  const { standing: all } = results.open;
  const index = all.findIndex((other) => other.item === undefined && isSame(other, open) && other.id === open.id);
  const naming = { issue: numberOf(identity.pack), at: identity.issuedAt, names: [] };
  return withNames(all, naming)[index]?.item ?? open.id;
}

/** Returns the name of a finding of the record: as an open item if it is open, else its identifier. */
export function findingName(context: PackContext, id: string): string {
  const open = standing(context, 'deferral', 'watch').find((item) => item.id === id && !isHeld(context, item));
  return open ? itemName(context, open) : id;
}

/** Whether an item comes from an earlier pack and has no entry in this record. */
const isHeld = ({ results }: PackContext, item: OpenItem): boolean => results.open.held.includes(item);

/** Returns the limit of an open item, on every clock; undefined if nobody set one. */
export function openUntil(
  { visit, fmt }: Pick<PackContext, 'visit' | 'fmt'>,
  { until, ...on }: Pick<OpenItem, 'until' | 'of' | 'meter' | 'counters' | 'dueAfter'>,
): string | undefined {
  return dueLimit(visit, { ...until, ...on }, fmt);
}

/** Returns limitations in force, those of earlier packs that nobody lifted among them, and outstanding flight tests. */
export function limitationTexts(context: PackContext): string[] {
  const { fmt } = context;
  return [
    ...standing(context, 'limitation').map(({ text }) => text),
    ...(context.visit.release?.flightTestsAfterRelease ?? []).map(({ modification, flownBy, limitation }) =>
      fmt.text(m.openItems_flightTestAfterRelease, { modification, flownBy, limitation }),
    ),
    ...heldOver(context, 'test').map((open) =>
      fmt.text(m.openItems_flightTestOwedSince, { context: itemName(context, open), open: open.text }),
    ),
  ];
}
