import type { Assessed } from '../../core/core.ts';
import type { LiveFacts } from '../../core/pack/views/owner-page.ts';
import type { Formatter } from '../../core/text/formatter.ts';
import * as m from '../../core/text/generated/messages.ts';
import { dateOf } from '../../core/units/calendar.ts';
import { orUnavailable } from './answer.ts';
import { openBefore } from './open-before.ts';
import type { OwnedPack } from './owned-pack.ts';
import type { Call } from './route.ts';
import type { UsableFacts } from './sealed-facts.ts';
import { sealedRecord } from './sealed-record.ts';

/** Pack as its page reads it. */
interface ReadPack {
  assessed: Assessed;
  /** Facts kept with the pack. */
  facts: UsableFacts | undefined;
  fmt: Formatter;
}

/**
 * Returns the assessment of the record of a pack today, over what was open before it.
 *
 * @returns undefined if the record no longer fits the schema
 */
export async function assessedAsThen(call: Call, owned: OwnedPack): Promise<Assessed | undefined> {
  const { name, pack } = owned;
  const { issuedAt, number } = pack.summary;
  const packs = orUnavailable(await call.world.archive.ledger(name, (ledger) => ledger.newestIssues()));
  const before = packs.filter(({ summary }) => summary.number < number);
  return sealedRecord(call, owned, issuedAt, await openBefore(call, name, before));
}

/**
 * Returns the basis of loadings, the next due items, and related remarks: as the pack states, or less if today's rules
 * allow less.
 */
export function liveFacts({ pipeline, world }: Call, owned: OwnedPack, read: ReadPack): LiveFacts {
  const { assessed, facts, fmt } = read;
  const { visit, results, regime } = assessed;
  const { summary } = owned.pack;
  const due = pipeline.nextDue({ visit, results, fmt }, summary.issuedAt);
  const today = dateOf(fmt.local(world.now().toISOString()));
  const { loading, tighter } = pipeline.factsToday({ visit, results }, { kept: facts?.owner, summary });
  const isOfWeighingAlone = pipeline.isOfWeighingAlone({ visit, regime });
  const until = pipeline.flownUntil(due, { visit, fmt });
  return {
    loading,
    // If only the weighing was released, nobody stated that the aircraft may be flown without a limit.
    until: until ?? (isOfWeighingAlone ? '' : fmt.text(m.liveFacts_noLimitRecord)),
    isOfWeighingAlone,
    past: due
      // The hours and counts of today are not known: an item that waits for them, too, may not be due.
      .filter(
        ({ date, isOverdue, dueAfter }) => isOverdue || (dueAfter !== 'all' && date !== undefined && date < today),
      )
      .map(({ what, limit }) => ({ what, limit })),
    tighter: tighter.map((limit) => pipeline.tighterText(limit, visit, fmt)),
  };
}
