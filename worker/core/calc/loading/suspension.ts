import type { Aircraft } from '../../record/visit.ts';
import { isAtLeast, isAtMost } from '../numbers/limit-met.ts';
import type { SuspensionRow, SuspensionTable } from './class-loading-result.ts';
import { fullFuelKg } from './fuel.ts';
import { isSeat, loadStationsOf } from './load-space.ts';

/**
 * Returns the position of the hang point or of the attachment for persons of round masses, alone and two, by the table of
 * the manufacturer.
 *
 * @param personsKg masses of a person for the rows
 * @returns undefined if the record has no such table, or no seat
 * @source common practice, no source; the table is the manufacturer’s
 */
export function suspensionTable(
  aircraft: Aircraft,
  emptyKg: number,
  personsKg: readonly number[],
): SuspensionTable | undefined {
  const { suspension } = aircraft;
  const seats = loadStationsOf(aircraft).filter(isSeat);
  const [front] = seats;
  if (!suspension || !front) return undefined;
  const rowOf = (persons: number, eachKg: number): SuspensionRow => {
    const occupantsKg = persons * eachKg;
    const decidesKg =
      suspension.by === 'front-occupant'
        ? eachKg
        : suspension.by === 'occupants'
          ? occupantsKg
          : Math.min(aircraft.maximumMassKg, emptyKg + occupantsKg + fullFuelKg(aircraft));
    const positions = suspension.positions
      .filter(
        ({ fromMassKg = 0, toMassKg = Number.POSITIVE_INFINITY }) =>
          isAtLeast(decidesKg, fromMassKg) && isAtMost(decidesKg, toMassKg),
      )
      .map(({ name }) => name);
    return { persons, eachKg, decidesKg, positions };
  };
  // Only the front occupant counts, so two rows for one mass would say the same.
  const crews = suspension.by === 'front-occupant' || seats.length < 2 ? [1] : [1, 2];
  return {
    by: suspension.by,
    rows: crews.flatMap((persons) =>
      personsKg.filter((eachKg) => isAtMost(eachKg, front.maximumMassKg)).map((eachKg) => rowOf(persons, eachKg)),
    ),
  };
}
