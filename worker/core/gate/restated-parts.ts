import type { Restated } from '../record/restated.ts';
import type { StandingChanged } from '../record/standing.ts';
import * as figure from '../text/figure.ts';
import * as m from '../text/generated/messages.ts';
import { type Said, said, type Value } from '../text/message.ts';
import { termOf } from '../text/terms.ts';
import type { Hit, RuleInput } from './rule.ts';

/** The reason that a record gives for what it states otherwise than its standing file; undefined without one. */
export function reasonFor(
  { part }: Pick<Restated, 'part'>,
  changed: readonly StandingChanged[] | undefined,
): StandingChanged | undefined {
  return changed?.find((reason) => part === reason.part || part.startsWith(`${reason.part}/`));
}

/** Returns a hit for each part that the record states otherwise than its standing file, without a reason. */
export function unreasoned({ visit, restated }: RuleInput, isWanted: (part: Restated) => boolean): Hit[] {
  return restated
    .filter((change) => isWanted(change) && !reasonFor(change, visit.standing?.changed))
    .map((change) => ({
      path: change.path,
      sentence: sentenceFor(change),
      data: { part: change.part },
    }));
}

function sentenceFor({ part, before, now, since: pack }: Restated): Said {
  if (now === undefined) return said(m.standingPart_dropped, { part, pack });
  if (before === undefined) return said(m.standingPart_added, { part, pack });
  const [was, is] = [shown(before), shown(now)];
  if (was === undefined || is === undefined) return said(m.standingPart_differs, { part, pack });
  return said(m.standingPart_was, { part, pack, was, is });
}

/** A value as the record states it; undefined for a part or a list. */
function shown(value: unknown): Value | undefined {
  if (typeof value === 'string') return termOf(value);
  if (typeof value === 'number') return figure.asIs(value);
  return typeof value === 'boolean' ? String(value) : undefined;
}
