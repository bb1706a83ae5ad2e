import { DASH } from '../../text/dash.ts';
import * as m from '../../text/generated/messages.ts';
import type { PackContext } from '../context.ts';
import { nameOf } from '../people.ts';
import type { View } from '../render.ts';

/** Occurrences, what was opened and how the work was left, and what an authorised person stated as not required. */
export function workState({ visit, fmt, results }: PackContext): View {
  const { opened = [], occurrences = [], closing, notRequired = [] } = visit;
  const itemName = (id: string): string => results.change.after.find((item) => item.id === id)?.name ?? id;
  const lines = [
    ...occurrences.map(({ kind, on, text }) =>
      fmt.text(m.workState_occurrence, { kind: fmt.term(kind), on: fmt.date(on), text }),
    ),
    ...opened.map(({ what, system, closedAt, by }) =>
      fmt.text(m.workState_opened, {
        what,
        system: fmt.term(system),
        closedAt: fmt.timestamp(closedAt),
        by: nameOf(visit, by),
      }),
    ),
    ...(closing
      ? [
          fmt.text(closing.nothingTemporary ? m.workState_closedNothingTemporary : m.workState_closed, {
            by: closing.by === undefined ? DASH : nameOf(visit, closing.by),
            at: closing.at === undefined ? DASH : fmt.timestamp(closing.at),
          }),
        ]
      : []),
  ];
  return {
    hasWorkState: lines.length > 0,
    workState: lines,
    hasNotRequired: notRequired.length > 0,
    notRequired: notRequired.map(({ evidence, of, reason, shownBy, by, secondBy, at }) => ({
      evidence: fmt.term(evidence),
      of: of === undefined ? DASH : itemName(of),
      reason: `${fmt.term(reason)}: ${shownBy}`,
      by: [by, secondBy].flatMap((person) => (person === undefined ? [] : [nameOf(visit, person)])).join(', '),
      at: fmt.timestamp(at),
    })),
  };
}
