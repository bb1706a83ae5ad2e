import type { Results } from '../calc/results.ts';
import type { Visit } from '../record/visit.ts';
import { type FirstEditionSummary, firstEditionFacts } from './first-edition-facts.ts';
import { type LoadingFacts, loadingFacts } from './loading-facts.ts';
import { ownerFacts } from './owner-facts.ts';
import { type OwnerFacts, readOwnerFacts } from './owner-facts-schema.ts';
import { type TighterLimit, tighterLimits } from './tighter-limits.ts';

/** What a pilot works with today, and where that is less than the pack says. */
export interface FactsToday {
  /** As the pack says, or by today's rules where these allow less; undefined where nothing can be loaded. */
  loading: LoadingFacts | undefined;
  tighter: TighterLimit[];
}

/**
 * Holds what today's rules make of a sealed record against what was said of its pack.
 *
 * @param visit the sealed record, with what today's rules give for it
 * @param pack what was kept of the owner's facts, where any were, and its summary
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
