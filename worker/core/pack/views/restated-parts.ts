import { reasonFor } from '../../gate/restated-parts.ts';
import { DASH } from '../../text/dash.ts';
import type { Formatter } from '../../text/formatter.ts';
import * as m from '../../text/generated/messages.ts';
import type { PackContext } from '../context.ts';
import { nameOf } from '../people.ts';
import type { View } from '../render.ts';

/** Rows for the parts that the record states otherwise than its standing file, each with the reason and who gave it. */
export function restatedParts({ visit, restated, fmt }: PackContext): View {
  const changed = visit.standing?.changed;
  return {
    hasRestated: restated.length > 0,
    restated: restated.map((change) => {
      const reason = reasonFor(change, changed);
      return {
        part: change.part,
        before: shown(change.before, fmt),
        now: shown(change.now, fmt),
        reason: reason ? `${fmt.term(reason.because)}: ${reason.shownBy}` : DASH,
        by: reason ? nameOf(visit, reason.by) : DASH,
      };
    }),
  };
}

/** A value as the record states it; of a list or a part only that it is there. */
function shown(value: unknown, fmt: Formatter): string {
  if (value === undefined) return DASH;
  if (typeof value === 'string') return fmt.term(value);
  if (Array.isArray(value)) return fmt.text(m.releaseStatement_entries, { count: value.length });
  if (typeof value === 'object') return fmt.text(m.releaseStatement_stated);
  return typeof value === 'number' ? fmt.asIs(value) : String(value);
}
