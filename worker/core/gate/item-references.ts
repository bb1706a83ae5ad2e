import type { Place } from '../record/record-index.ts';
import type { Visit } from '../record/visit.ts';
import { fieldsOf } from '../record/visit-fields.ts';

/** Parts of the record whose entries are about items that are aboard after the visit. */
const ABOARD: ReadonlySet<string | number | undefined> = new Set(['electrical', 'antennas', 'surveillance', 'wiring']);

/** References to items that have to be aboard after the visit; not those of loads that were removed, or of old wires. */
export function itemReferences(visit: Visit): Place<'reference'>[] {
  return fieldsOf(visit, 'reference').filter(
    ({ means, path, around }) =>
      means.to.includes('equipment-item') &&
      ABOARD.has(path[0]) &&
      path[1] !== 'found' &&
      around.at(-1)?.value.change !== 'removed',
  );
}
