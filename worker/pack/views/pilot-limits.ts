import { tanksOf } from '../../calc/fuel.ts';
import type { Governing } from '../../calc/loading/load-limits.ts';
import type { Bound } from '../../text/print.ts';
import { phrase } from '../../words/words.ts';
import type { PackContext } from '../context.ts';
import { type BothSystems, bothSystems } from './both-systems.ts';

/** Limits that are not to be passed. */
const MOST = { bound: 'most' } as const;
const LEAST = { bound: 'least' } as const;

const GOVERNING: Readonly<Record<Governing, string>> = {
  'maximum-mass': phrase`maximum mass`,
  envelope: phrase`top of the envelope`,
  'zero-fuel-mass': phrase`maximum zero-fuel mass`,
  'landing-mass': phrase`maximum landing mass`,
  'joint-limits': phrase`combined limits of seats and baggage`,
  places: phrase`limits of seats and baggage`,
};

/** A limit as a pilot reads it: what it is, how much, and what it follows from. */
export interface LimitRow {
  readonly [name: string]: string | BothSystems;
  name: string;
  measure: BothSystems;
  /** Empty where there is nothing to add. */
  note: string;
}

/** The masses that bind an aircraft, as its papers state them; those that it has. */
export function massLimitRows({ visit, say }: PackContext): LimitRow[] {
  const { maximumMassKg, maximumZeroFuelMassKg, maximumLandingMassKg } = visit.aircraft;
  return [
    row(say.words`Maximum mass`, bothSystems(say, 'mass', maximumMassKg, MOST)),
    ...(maximumZeroFuelMassKg === undefined
      ? []
      : [row(say.words`Maximum zero-fuel mass`, bothSystems(say, 'mass', maximumZeroFuelMassKg, MOST))]),
    ...(maximumLandingMassKg === undefined
      ? []
      : [row(say.words`Maximum landing mass`, bothSystems(say, 'mass', maximumLandingMassKg, MOST))]),
  ];
}

/** What may be loaded, with the limit that is met first, and the least solo pilot. */
export function loadLimitRows(context: PackContext): LimitRow[] {
  const { visit, results, say } = context;
  const { loading } = results;
  if (!loading) return [];
  const { usefulLoad, fullTanksPayload } = loading.limits;
  const hasTanks = tanksOf(visit.aircraft).length > 0;
  return [
    row(
      hasTanks ? say.words`Crew, baggage and fuel together` : say.words`Crew and baggage together`,
      bothSystems(say, 'mass', usefulLoad.kg, MOST),
      usefulLoadNote(context),
    ),
    ...(hasTanks
      ? [
          row(
            say.words`Left for crew and baggage with full tanks`,
            bothSystems(say, 'mass', fullTanksPayload.kg, MOST),
            fullTanksNote(context),
          ),
        ]
      : []),
    ...leastPilotRows(context),
  ];
}

/** The least solo pilot, as a limit that is not to be passed downward. */
export function leastPilotRows({ visit, results, say }: PackContext): LimitRow[] {
  const least = results.loading?.leastPilot;
  if (!least) return [];
  const pilots = visit.aircraft.stations.filter(({ kind }) => kind === 'pilot');
  const seat = pilots.length > 1 ? (pilots.find(({ id }) => id === least.station)?.name ?? '') : '';
  const why = {
    placard: '',
    custom: say.words`a custom: the aircraft states none`,
    envelope: say.words`by the envelope`,
  }[least.governedBy];
  const measure =
    least.kg === undefined ? { value: say.words`none allowed`, other: '' } : bothSystems(say, 'mass', least.kg, LEAST);
  return [row(say.words`Least solo pilot`, measure, [seat, why].filter(Boolean).join(', '))];
}

/** The limit that the useful load meets first. */
export function usefulLoadNote(context: PackContext): string {
  const { results, say, visit } = context;
  const { governedBy: governing } = results.loading?.limits.usefulLoad ?? {};
  if (governing === undefined) return '';
  const isToLand = governing === 'landing-mass' && tanksOf(visit.aircraft).length > 0;
  return isToLand ? say.words`${governedBy(context, governing)}, to land at once` : governedBy(context, governing);
}

/** The limit that a payload meets first; where that is the landing mass, what may take off beyond it, and what has to be burnt then. */
export function fullTanksNote(context: PackContext): string {
  const { results, say } = context;
  const { loading } = results;
  if (!loading) return '';
  const { fullTanksPayload } = loading.limits;
  const governing = governedBy(context, fullTanksPayload.governedBy);
  if (fullTanksPayload.governedBy === 'landing-mass') return `${landingNote(context, governing)}. ${burnText(context)}`;
  return fullTanksPayload.kg < 0 ? say.words`${governing}: full tanks alone are too much` : governing;
}

function landingNote({ results, say }: PackContext, governing: string): string {
  return (results.loading?.limits.fullTanksPayload.kg ?? 0) < 0
    ? say.words`${governing}: with full tanks it cannot land at once, even without load`
    : say.words`${governing}, to land at once with full tanks`;
}

/**
 * In kilograms and, as tanks are read, in volume: what is burnt by the lightest fuel aboard and what is left by the heaviest, so that
 * neither volume flatters.
 */
function burnText({ visit, results, say }: PackContext): string {
  const beyond = results.loading?.limits.afterBurn;
  if (!beyond) return say.words`More only if as much fuel is burnt before landing, and the reserve is left`;
  const densities = tanksOf(visit.aircraft).map(({ densityKgPerL }) => densityKgPerL);
  const fuel = (kg: number, densityKgPerL: number, bound: Bound): string =>
    `${say.measure('mass', kg, { bound })} (${say.measure('volume', kg / densityKgPerL, { bound })})`;
  const payload = say.measure('mass', beyond.payloadKg, MOST);
  const burnt = fuel(beyond.burnKg, Math.min(...densities), 'least');
  const left = fuel(beyond.leftKg, Math.max(...densities), 'most');
  return say.words`To take off with up to ${payload}, plan to burn at least ${burnt} before landing; at most ${left} of usable fuel is left then`;
}

export function governedBy({ say }: PackContext, governing: Governing): string {
  return say.words`Limited by: ${say.term(GOVERNING[governing])}`;
}

function row(name: string, measure: BothSystems, note = ''): LimitRow {
  return { name, measure, note };
}
