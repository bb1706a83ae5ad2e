import type { Aircraft, Configuration, Station } from '../../record/visit.ts';

/** Id of the configuration of the visit in results, if the record names none. */
export const WORKED = 'this';

/**
 * Returns the aircraft as it is in one of its other configurations: what that configuration does not state is as in the one
 * that it follows from, or as in the aircraft.
 */
export function configuredAircraft(aircraft: Aircraft, configuration: Configuration): Aircraft {
  return inConfiguration(aircraft, configuration, new Set([configuration.id]));
}

function inConfiguration(aircraft: Aircraft, configuration: Configuration, asking: ReadonlySet<string>): Aircraft {
  const { id, name, follows, ...own } = configuration;
  const from = (aircraft.configurations ?? []).find((other) => other.id === follows?.configuration);
  const base = from && !asking.has(from.id) ? inConfiguration(aircraft, from, new Set([...asking, from.id])) : aircraft;
  const stated = Object.fromEntries(Object.entries(own).filter(([, value]) => value !== undefined));
  const hasOwnEnvelope = own.envelope !== undefined || own.envelopeEquations !== undefined;
  return {
    ...base,
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
