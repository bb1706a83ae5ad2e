import type { Loading } from '../calc/loading/boundary.ts';
import type { Printer } from '../units/print.ts';
import type { Visit } from '../visit/visit.ts';

/**
 * A loading in words: what is on each station that carries something.
 *
 * @example 'Left seat 55.0 kg, Baggage 20.0 kg, Main tank 14.4 kg of usable fuel'
 */
export function describeLoading(visit: Visit, { load }: Loading, say: Printer): string {
  const parts = visit.aircraft.stations
    .filter(({ id }) => (load[id] ?? 0) > 0)
    .map(({ id, name, kind }) =>
      kind === 'fuel'
        ? say.words`${name} ${say.measure('mass', load[id] ?? 0)} of usable fuel`
        : `${name} ${say.measure('mass', load[id] ?? 0)}`,
    );
  return parts.join(', ') || say.words`nothing aboard`;
}
