import { reasonFor } from '../../gate/restated-parts.ts';
import { DASH } from '../../text/dash.ts';
import type { PackContext } from '../context.ts';
import { nameOf } from '../people.ts';
import type { View } from '../render.ts';
import { valueText } from './value-text.ts';

/** Rows for the parts that the record states otherwise than its standing file, each with the reason and who gave it. */
export function restatedParts({ visit, restated, fmt }: PackContext): View {
  const changed = visit.standing?.changed;
  return {
    hasRestated: restated.length > 0,
    restated: restated.map((change) => {
      const reason = reasonFor(change, changed);
      return {
        part: change.part,
        before: valueText(change.before),
        now: valueText(change.now),
        reason: reason ? `${fmt.term(reason.because)}: ${reason.shownBy}` : DASH,
        by: reason ? nameOf(visit, reason.by) : DASH,
      };
    }),
  };
}
