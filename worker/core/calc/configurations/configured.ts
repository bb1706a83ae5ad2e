import type { Aircraft, Configuration, Station } from '../../record/visit.ts';

/** Id of the configuration of the visit in results, if the record names none. */
export const WORKED = 'this';

/** Returns the aircraft as it is in one of its other configurations: what the configuration does not state is as in the aircraft. */
export function configuredAircraft(aircraft: Aircraft, configuration: Configuration): Aircraft {
  const { id, name, follows: _follows, ...own } = configuration;
  const stated = Object.fromEntries(Object.entries(own).filter(([, value]) => value !== undefined));
  const hasOwnEnvelope = own.envelope !== undefined || own.envelopeEquations !== undefined;
  return {
    ...aircraft,
    // Corners of one envelope never mix with the lower edge or the equations of another.
    ...(hasOwnEnvelope && { envelope: undefined, envelopeEquations: undefined, envelopeLowerEdge: undefined }),
    ...stated,
    configuration: { id, name },
  };
}

/** Returns the aircraft in one of its categories, with the same empty mass. */
export function aircraftInCategory(
  aircraft: Aircraft,
  { maximumMassKg, envelope, envelopeLowerEdge, unusedStations = [] }: NonNullable<Aircraft['categories']>[number],
): Aircraft {
  const unused = new Set(unusedStations);
  return {
    ...aircraft,
    maximumMassKg: Math.min(aircraft.maximumMassKg, maximumMassKg ?? aircraft.maximumMassKg),
    envelope,
    envelopeEquations: undefined,
    envelopeLowerEdge,
    stations: aircraft.stations.map((station) => (unused.has(station.id) ? emptied(station) : station)),
  };
}

/** Returns a station that may carry nothing. */
function emptied(station: Station): Station {
  if (station.kind === 'fuel') return { ...station, capacityL: station.unusableL };
  if (station.kind === 'water') return { ...station, capacityL: 0 };
  return { ...station, minimumMassKg: undefined, maximumMassKg: 0 };
}
