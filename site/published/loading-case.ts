import type { Loading } from '../../worker/core/calc/loading/boundary.ts';
import { loadingExtremes } from '../../worker/core/calc/loading/extremes.ts';
import type { Restriction } from '../../worker/core/calc/loading/load-space.ts';
import { loadingOf } from '../../worker/core/calc/loading/loading-of.ts';
import { judgeOf } from '../../worker/core/calc/loading/verdict.ts';
import { cgMm, type MassMoment } from '../../worker/core/calc/mass/mass-moment.ts';
import type { Aircraft } from '../../worker/core/record/visit.ts';
import { factorOf, type Units } from '../../worker/core/units/quantity.ts';
import { readVisit } from './read-visit.ts';

interface LoadingInput {
  units: Units;
  empty: { mass: number; moment: number };
  seats: { id: string; kind: 'pilot' | 'passenger' | 'baggage'; arm: number; maximum: number }[];
  tanks: { id: string; arm: number; capacity: number; density: number }[];
  maximumMass: number;
}

function loadable({ units, empty, seats, tanks, maximumMass }: LoadingInput): {
  aircraft: Aircraft;
  empty: MassMoment;
} {
  const [kg, mm] = [factorOf('mass', units), factorOf('arm', units)];
  const aircraft: Aircraft = {
    ...readVisit('computed-only').aircraft,
    maximumMassKg: maximumMass * kg,
    stations: [
      ...seats.map(({ id, kind, arm, maximum }) => ({
        id,
        name: id,
        kind,
        armMm: arm * mm,
        maximumMassKg: maximum * kg,
      })),
      ...tanks.map(({ id, arm, capacity, density }) => ({
        id,
        name: id,
        kind: 'fuel' as const,
        armMm: arm * mm,
        capacityL: capacity * factorOf('volume', units),
        unusableL: 0,
        densityKgPerL: density * factorOf('density', units),
      })),
    ],
  };
  return { aircraft, empty: { massKg: empty.mass * kg, momentKgMm: empty.moment * kg * mm } };
}

function inUnits(whole: MassMoment, units: Units): Record<string, number> {
  return {
    mass: whole.massKg / factorOf('mass', units),
    moment: whole.momentKgMm / factorOf('moment', units),
    arm: cgMm(whole) / factorOf('arm', units),
  };
}

type LoadedInput = LoadingInput & { load: Record<string, number> };

function loaded(input: LoadedInput): { aircraft: Aircraft; loading: Loading } {
  const { aircraft, empty } = loadable(input);
  const kg = factorOf('mass', input.units);
  const load = Object.fromEntries(Object.entries(input.load).map(([station, mass]) => [station, mass * kg]));
  return { aircraft, loading: loadingOf(aircraft, empty, load) };
}

/** A stated loading through `loadingOf()`. */
export function loadingCase(input: LoadedInput): Record<string, number> {
  return inUnits(loaded(input).loading, input.units);
}

/** By how much `judgeOf()` finds a stated loading over the maximum mass; 0 if it is not. */
export function overMaximumCase(input: LoadedInput): Record<string, number> {
  const { aircraft, loading } = loaded(input);
  const verdict = judgeOf(aircraft)(loading);
  const overKg = verdict.state === 'too-heavy' ? verdict.overKg : 0;
  return { ...inUnits(loading, input.units), over: overKg / factorOf('mass', input.units) };
}

type ExtremeInput = LoadingInput & {
  side: 'forward' | 'aft';
  restriction: Record<string, { minimum?: number; maximum?: number }>;
};

/** The most adverse loading that `loadingExtremes()` finds on one side. */
export function extremeCase(input: ExtremeInput): Record<string, number> {
  const { aircraft, empty } = loadable(input);
  const kg = factorOf('mass', input.units);
  const restriction: Restriction = Object.fromEntries(
    Object.entries(input.restriction).map(([station, { minimum, maximum }]) => [
      station,
      { ...(minimum && { minimumKg: minimum * kg }), ...(maximum && { maximumKg: maximum * kg }) },
    ]),
  );
  const extremes = loadingExtremes(aircraft, { empty, leastPilotKg: 0, restriction });
  if (!extremes) throw new Error('the case can be loaded');
  return inUnits(extremes[input.side].loading, input.units);
}
