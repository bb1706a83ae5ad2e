import type { Visit } from '../visit/visit.ts';
import { phrase } from '../words/words.ts';
import type { Reference } from './identified.ts';

/** References within the electrical, wiring and antenna parts, and from them to lines of the equipment list. */
export function electricalReferences(visit: Visit, equipment: readonly string[]): Reference[] {
  const { electrical, wiring, antennas } = visit;
  const found: Reference[] = [];
  const add = (what: string, id: string | undefined, known: readonly string[], ...path: (string | number)[]): void => {
    if (id !== undefined) found.push({ what, id, path, known });
  };
  const circuits = (electrical?.circuits ?? []).map(({ id }) => id);
  const buses = (electrical?.buses ?? []).map(({ id }) => id);
  for (const [i, source] of (electrical?.sources ?? []).entries())
    add(phrase`equipment item`, source.item, equipment, 'electrical', 'sources', i, 'item');
  add(phrase`equipment item`, electrical?.battery?.item, equipment, 'electrical', 'battery', 'item');
  for (const [i, load] of (electrical?.loads ?? []).entries()) {
    add(phrase`bus`, load.bus, buses, 'electrical', 'loads', i, 'bus');
    add(phrase`circuit`, load.circuit, circuits, 'electrical', 'loads', i, 'circuit');
    // A load that was taken out may be of an item that the list no longer has; the baseline still names it.
    add(phrase`equipment item`, load.item, equipment, 'electrical', 'loads', i, 'item');
  }
  const sources = (electrical?.sources ?? []).map(({ id }) => id);
  for (const [i, { feedsBus, mainFeeder }] of (electrical?.circuits ?? []).entries()) {
    add(phrase`bus`, feedsBus, buses, 'electrical', 'circuits', i, 'feedsBus');
    if (mainFeeder?.kind === 'source')
      add(phrase`source`, mainFeeder.source, sources, 'electrical', 'circuits', i, 'mainFeeder', 'source');
  }
  for (const [i, { item }] of (wiring?.connectors ?? []).entries())
    add(phrase`equipment item`, item, equipment, 'wiring', 'connectors', i, 'item');
  if (electrical) {
    for (const [i, { circuit }] of (wiring?.points ?? []).entries())
      add(phrase`circuit`, circuit, circuits, 'wiring', 'points', i, 'circuit');
    for (const [i, { circuit }] of (wiring?.wires ?? []).entries())
      add(phrase`circuit`, circuit, circuits, 'wiring', 'wires', i, 'circuit');
  }
  for (const [i, { item }] of (antennas?.items ?? []).entries())
    add(phrase`equipment item`, item, equipment, 'antennas', 'items', i, 'item');
  return found;
}
