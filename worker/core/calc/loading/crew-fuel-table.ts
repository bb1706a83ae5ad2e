import type { Aircraft, LoadStation } from '../../record/visit.ts';
import type { MassMoment } from '../mass/mass-moment.ts';
import { lastInside } from '../numbers/last-inside.ts';
import { isAtLeast, isAtMost } from '../numbers/limit-met.ts';
import type { Loading } from './boundary.ts';
import { tanksOf } from './fuel.ts';
import { isBaggagePlace, isSeat, loadStationsOf } from './load-space.ts';
import { loadingOf } from './loading-of.ts';
import type { CrewAboard, CrewFuelCell, CrewFuelRow, CrewFuelTable } from './loading-result.ts';
import type { Verdict } from './verdict.ts';

export type { CrewAboard, CrewFuelCell, CrewFuelTable } from './loading-result.ts';

const SHARES = [0.25, 0.5, 0.75, 1] as const;
/** Resolution of the max. baggage: below any printed digit. */
const CLOSE_KG = 1e-8;

/**
 * Returns the baggage allowed for each crew and fuel, judged from take-off until no usable fuel is left.
 *
 * @param crewKg masses of a person for the rows
 * @param judge check of a loading of this aircraft, from `judgeOf`
 * @source common practice, no source
 */
export function crewFuelTable(
  aircraft: Aircraft,
  empty: MassMoment,
  crewKg: readonly number[],
  judge: (loading: Loading) => Verdict,
): CrewFuelTable {
  const tanks = tanksOf(aircraft);
  const usableL = tanks.map(({ capacityL, unusableL }) => Math.max(0, capacityL - unusableL));
  const seats = loadStationsOf(aircraft);
  const crews = crewsOf(aircraft);
  const fuelAt = (share: number): Record<string, number> =>
    Object.fromEntries(tanks.map((tank, index) => [tank.id, (usableL[index] ?? 0) * share * tank.densityKgPerL]));
  const places = seats.filter(isBaggagePlace);
  const allowed = (load: Record<string, number>): CrewFuelCell => {
    const bare = loadingOf(aircraft, empty, load);
    const roomKg = Math.max(0, aircraft.maximumMassKg - bare.massKg);
    return mostBaggage(places, roomKg, (baggageKg) =>
      judge(loadingOf(aircraft, empty, { ...load, ...stowed(places, baggageKg) })),
    );
  };
  const rows = crews.flatMap(({ aboard, used }) =>
    crewKg
      .filter((eachKg) =>
        used.every((seat) => isAtLeast(eachKg, seat.minimumMassKg ?? 0) && isAtMost(eachKg, seat.maximumMassKg)),
      )
      .map((eachKg): CrewFuelRow => {
        const crew = Object.fromEntries(used.map((seat) => [seat.id, eachKg]));
        return {
          aboard,
          eachKg,
          cells: SHARES.map((share) => allowed({ ...crew, ...fuelAt(share) })),
        };
      }),
  );
  const totalL = usableL.reduce((sum, volume) => sum + volume, 0);
  return {
    usableL: SHARES.map((share) => totalL * share),
    seats: crews.map(({ aboard, used }) => ({ aboard, stations: used.map(({ id }) => id) })),
    rows,
  };
}

/** A full aircraft is a separate crew if each of its seats is a station: a mass does not show how many people sit on a bench. */
function crewsOf(aircraft: Aircraft): { aboard: CrewAboard; used: LoadStation[] }[] {
  const seats = loadStationsOf(aircraft).filter(isSeat);
  const pilot = seats.find(({ kind }) => kind === 'pilot');
  const passenger = seats.find(({ kind }) => kind === 'passenger');
  if (!pilot) return [];
  return [
    { aboard: 'solo', used: [pilot] },
    ...(passenger ? [{ aboard: 'two' as const, used: [pilot, passenger] }] : []),
    ...(seats.length > 2 && seats.length === aircraft.seats ? [{ aboard: 'all' as const, used: seats }] : []),
  ];
}

/**
 * Returns the max. baggage, loaded into its compartments in their order, up to which every amount stays inside. Until a
 * compartment is full the loading moves along a straight line, which leaves the limits only once.
 */
function mostBaggage(
  places: readonly LoadStation[],
  roomKg: number,
  judge: (baggageKg: number) => Verdict,
): CrewFuelCell {
  const bare = judge(0);
  if (bare.state !== 'inside') return { refused: bare };
  let inside = 0;
  for (const { maximumMassKg } of places) {
    const full = Math.min(inside + maximumMassKg, roomKg);
    if (judge(full).state !== 'inside')
      return { baggageKg: lastInside((kg) => judge(kg).state === 'inside', inside, full, CLOSE_KG) };
    inside = full;
  }
  return { baggageKg: inside };
}

/** Loads baggage into its compartments in their order. */
function stowed(places: readonly LoadStation[], baggageKg: number): Record<string, number> {
  let left = baggageKg;
  const load: Record<string, number> = {};
  for (const { id, maximumMassKg } of places) {
    load[id] = Math.min(left, maximumMassKg);
    left -= load[id];
  }
  return load;
}
