import type { Results } from '../calc/results.ts';
import type { Visit } from '../record/visit.ts';
import { type FirstEditionSummary, firstEditionFacts } from './first-edition-facts.ts';
import { type LoadingFacts, loadingFacts } from './loading-facts.ts';
import { ownerFacts } from './owner-facts.ts';
import { type OwnerFacts, readOwnerFacts } from './owner-facts-schema.ts';
import { type TighterLimit, tighterLimits } from './tighter-limits.ts';

/** Facts for a pilot today, and the limits that are tighter than the pack states. */
export interface FactsToday {
  /** As in the pack, or by today's rules if these allow less; undefined if nothing can be loaded. */
  loading: LoadingFacts | undefined;
  tighter: TighterLimit[];
}

/**
 * Compares the result of today's rules for a sealed record with the facts of its pack.
 *
 * @param visit the sealed record, with its results by today's rules
 * @param pack the kept owner's facts, if any, and the summary
 */
export function factsToday(
  { visit, results }: { visit: Visit; results: Results },
  { kept, summary }: { kept: OwnerFacts | undefined; summary: FirstEditionSummary & { issuedAt: string } },
): FactsToday {
  const sealed = readOwnerFacts(kept) ?? firstEditionFacts(visit, results, summary.issuedAt, summary);
  const tighter = tighterLimits(sealed, ownerFacts(visit, results, summary.issuedAt));
  const today = loadingFacts(visit, results);
  const isAsSealed = kept !== undefined && tighter.length === 0;
  return { loading: isAsSealed && today ? ((sealed.loading as LoadingFacts | null) ?? undefined) : today, tighter };
}
