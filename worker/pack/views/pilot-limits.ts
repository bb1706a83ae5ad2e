import { tanksOf } from '../../calc/fuel.ts';
import type { Governing } from '../../calc/loading/load-limits.ts';
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
      governedBy(context, usefulLoad.governedBy),
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

/** The limit that a payload meets first, and what has to be burnt before landing with it. */
export function fullTanksNote(context: PackContext): string {
  const { results, say } = context;
  const { loading } = results;
  if (!loading) return '';
  const { fullTanksPayload, leastBurnKg } = loading.limits;
  const governing = governedBy(context, fullTanksPayload.governedBy);
  if (fullTanksPayload.kg < 0) return say.words`${governing}: full tanks alone are too much`;
  return leastBurnKg > 0 ? `${governing}. ${burnText(context, leastBurnKg)}` : governing;
}

/** In kilograms and, as tanks are read, in volume: by the lightest fuel aboard, so that the volume is never too little. */
function burnText({ visit, say }: PackContext, leastBurnKg: number): string {
  const density = Math.min(...tanksOf(visit.aircraft).map(({ densityKgPerL }) => densityKgPerL));
  const [mass, volume] = [say.measure('mass', leastBurnKg, LEAST), say.measure('volume', leastBurnKg / density, LEAST)];
  return say.words`Burn at least ${mass} (${volume}) before landing`;
}

export function governedBy({ say }: PackContext, governing: Governing): string {
  return say.words`Limited by: ${say.term(GOVERNING[governing])}`;
}

function row(name: string, measure: BothSystems, note = ''): LimitRow {
  return { name, measure, note };
}
