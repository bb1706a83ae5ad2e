import { fullFuelKg } from '../calc/loading/fuel.ts';
import type { Results } from '../calc/results.ts';
import type { Visit } from '../record/visit.ts';
import { ownerFacts } from './owner-facts.ts';
import type { OwnerFacts, OwnerLimit } from './owner-facts-schema.ts';

/** Summary of a first-edition pack in the list of packs: its empty aircraft as calculated then. */
export interface FirstEditionSummary {
  emptyMassKg: number | null;
  emptyArmMm: number | null;
}

/**
 * Returns the owner's facts of a pack of the first edition, which kept none: the payload with full tanks was maximum
 * mass less empty mass less full fuel, the useful load was maximum mass less empty mass, independent of other limits.
 * Figures were then rounded to the nearest and are now rounded inward: that does not count as a difference of rules.
 *
 * @param results results of the same record by today's rules
 * @param kept empty aircraft from its summary (default: the result of today's rules)
 */
export function firstEditionFacts(visit: Visit, results: Results, at: string, kept?: FirstEditionSummary): OwnerFacts {
  const facts = ownerFacts(visit, results, at);
  const emptyKg = kept?.emptyMassKg ?? results.schedule?.massKg ?? 0;
  const usefulKg = visit.aircraft.maximumMassKg - emptyKg;
  const then: Readonly<Record<string, number>> = {
    'empty-mass': emptyKg,
    'empty-arm': kept?.emptyArmMm ?? results.schedule?.armMm ?? 0,
    'useful-load': usefulKg,
    'full-tanks-payload': usefulKg - fullFuelKg(visit.aircraft),
  };
  const asThen = ({ governedBy: _governedBy, ...limit }: OwnerLimit): OwnerLimit => ({
    ...limit,
    value: then[limit.id] ?? limit.value,
  });
  return { ...facts, limits: facts.limits.map(asThen) };
}
