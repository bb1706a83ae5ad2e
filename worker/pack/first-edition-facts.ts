import { fullFuelKg } from '../calc/fuel.ts';
import type { Results } from '../calc/results.ts';
import { asPrinted } from '../units/print.ts';
import type { Visit } from '../visit/visit.ts';
import { ownerFacts } from './owner-facts.ts';
import type { OwnerFacts, OwnerLimit } from './owner-facts-schema.ts';

/** What the list of packs kept of a pack of the first edition: its empty aircraft as it was computed then. */
export interface FirstEditionSummary {
  emptyMassKg: number | null;
  emptyArmMm: number | null;
}

/**
 * The owner's facts as a pack of the first edition printed them, which kept none: the payload with full tanks was maximum mass less
 * empty mass less full fuel, the useful load was maximum mass less empty mass, whatever other limits there were, and every figure
 * was rounded to the nearest in the unit of the record.
 *
 * @param results of the same record by today's rules
 * @param kept what its summary says of the empty aircraft; without it, what today's rules give
 */
export function firstEditionFacts(visit: Visit, results: Results, at: string, kept?: FirstEditionSummary): OwnerFacts {
  const facts = ownerFacts(visit, results, at);
  const emptyKg = kept?.emptyMassKg ?? results.schedule?.massKg ?? 0;
  const { maximumMassKg } = visit.aircraft;
  const usefulKg = maximumMassKg - emptyKg;
  const then: Readonly<Record<string, number | null>> = {
    'empty-mass': emptyKg,
    'empty-arm': kept?.emptyArmMm ?? results.schedule?.armMm ?? 0,
    'useful-load': usefulKg,
    'full-tanks-payload': usefulKg - fullFuelKg(visit.aircraft),
  };
  const printed = (limit: OwnerLimit): OwnerLimit => {
    const value = then[limit.id] ?? limit.value;
    const { governedBy: _governedBy, ...rest } = limit;
    // The empty aircraft is no limit: a difference of rounding alone is none.
    const isRounded = value !== null && !limit.id.startsWith('empty-');
    return { ...rest, value: isRounded ? asPrinted(limit.quantity, value, visit.units) : value };
  };
  return { ...facts, limits: facts.limits.map(printed) };
}
