import { isSame, type OpenItem, wasDone } from '../../calc/open-items/open-item.ts';
import type { CARRIED_ANSWERS } from '../../record/carried.ts';
import { DASH } from '../../text/dash.ts';
import * as m from '../../text/generated/messages.ts';
import type { Message } from '../../text/message.ts';
import type { PackContext } from '../context.ts';
import { nameOf } from '../people.ts';
import { itemName, openUntil } from './open-items.ts';

type Answer = NonNullable<PackContext['visit']['carried']>[number];

const ANSWERS: Readonly<Record<(typeof CARRIED_ANSWERS)[number], Message>> = {
  closed: m.carriedRows_closed,
  repeated: m.carriedRows_stands,
  extended: m.carriedRows_givenMoreTime,
  superseded: m.carriedRows_replacedAnotherEntry,
};

/** Returns the items that earlier packs left open, with the response of this visit to each. */
export function carriedRows(context: PackContext): Record<string, string>[] {
  const { visit, results, fmt } = context;
  return results.open.before.map((open) => {
    const answer = (visit.carried ?? []).find(({ item }) => item === open.item);
    return {
      item: itemName(context, open),
      text: open.text,
      limit: openUntil(context, open) ?? DASH,
      became: became(context, open, answer),
      by: answer ? `${nameOf(visit, answer.by)}, ${fmt.day(answer.at)}` : DASH,
      reason: [answer?.reason, answer?.evidence].filter(Boolean).join('; ') || DASH,
    };
  });
}

function became({ visit, results, fmt }: PackContext, open: OpenItem, answer: Answer | undefined): string {
  if (answer) return fmt.text(ANSWERS[answer.answer]);
  const isInRecord = !results.open.held.includes(open);
  const isDone = results.open.stated.some((entry) => isSame(open, entry) && wasDone(open, entry));
  if (isDone) return fmt.text(m.carriedRows_doneThisVisit);
  if (isInRecord) return fmt.text(m.carriedRows_standsRecord);
  return fmt.text(visit.standing ? m.carriedRows_inStandingFile : m.carriedRows_notAnsweredStands);
}
