import { tanksOf } from '../../calc/fuel.ts';
import type { Governing } from '../../calc/loading/load-limits.ts';
import * as m from '../../text/generated/messages.ts';
import type { Message } from '../../text/message.ts';
import type { Bound } from '../../text/print.ts';
import type { PackContext } from '../context.ts';
import { type BothSystems, bothSystems } from './both-systems.ts';

/** Limits that are not to be passed. */
const MOST = { bound: 'most' } as const;
const LEAST = { bound: 'least' } as const;

const GOVERNING: Readonly<Record<Governing, Message>> = {
  'maximum-mass': m.pilotLimits_maximumMass,
  envelope: m.pilotLimits_topEnvelope,
  'zero-fuel-mass': m.maximumZeroFuelMass,
  'landing-mass': m.maximumLandingMass,
  'joint-limits': m.pilotLimits_combinedLimitsSeatsBaggage,
  places: m.pilotLimits_limitsSeatsBaggage,
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
    row(say.text(m.maximumMass), bothSystems(say, 'mass', maximumMassKg, MOST)),
    ...(maximumZeroFuelMassKg === undefined
      ? []
      : [row(say.text(m.maximumZeroFuelMass2), bothSystems(say, 'mass', maximumZeroFuelMassKg, MOST))]),
    ...(maximumLandingMassKg === undefined
      ? []
      : [row(say.text(m.maximumLandingMass2), bothSystems(say, 'mass', maximumLandingMassKg, MOST))]),
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
      hasTanks ? say.text(m.crewBaggageFuelTogether) : say.text(m.pilotLimits_crewBaggageTogether),
      bothSystems(say, 'mass', usefulLoad.kg, MOST),
      usefulLoadNote(context),
    ),
    ...(hasTanks
      ? [
          row(
            say.text(m.leftCrewBaggageFull),
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
    custom: say.text(m.pilotLimits_customAircraftStatesNone),
    envelope: say.text(m.pilotLimits_envelope),
  }[least.governedBy];
  const measure =
    least.kg === undefined ? { value: say.text(m.noneAllowed), other: '' } : bothSystems(say, 'mass', least.kg, LEAST);
  return [row(say.text(m.leastSoloPilot), measure, [seat, why].filter(Boolean).join(', '))];
}

/** The limit that the useful load meets first. */
export function usefulLoadNote(context: PackContext): string {
  const { results, say, visit } = context;
  const { governedBy: governing } = results.loading?.limits.usefulLoad ?? {};
  if (governing === undefined) return '';
  const isToLand = governing === 'landing-mass' && tanksOf(visit.aircraft).length > 0;
  return isToLand
    ? say.text(m.pilotLimits_landOnce, { governedBy: governedBy(context, governing) })
    : governedBy(context, governing);
}

/** The limit that a payload meets first; where that is the landing mass, what may take off beyond it, and what has to be burnt then. */
export function fullTanksNote(context: PackContext): string {
  const { results, say } = context;
  const { loading } = results;
  if (!loading) return '';
  const { fullTanksPayload } = loading.limits;
  const governing = governedBy(context, fullTanksPayload.governedBy);
  if (fullTanksPayload.governedBy === 'landing-mass') return `${landingNote(context, governing)}. ${burnText(context)}`;
  return fullTanksPayload.kg < 0 ? say.text(m.pilotLimits_fullTanksAloneToo, { governing }) : governing;
}

function landingNote({ results, say }: PackContext, governing: string): string {
  return (results.loading?.limits.fullTanksPayload.kg ?? 0) < 0
    ? say.text(m.pilotLimits_fullTanksCannotLand, { governing })
    : say.text(m.pilotLimits_landOnceFullTanks, { governing });
}

/**
 * In kilograms and, as tanks are read, in volume: what is burnt by the lightest fuel aboard and what is left by the heaviest, so that
 * neither volume flatters.
 */
function burnText({ visit, results, say }: PackContext): string {
  const beyond = results.loading?.limits.afterBurn;
  if (!beyond) return say.text(m.pilotLimits_moreOnlyIfMuch);
  const densities = tanksOf(visit.aircraft).map(({ densityKgPerL }) => densityKgPerL);
  const fuel = (kg: number, densityKgPerL: number, bound: Bound): string =>
    `${say.measure('mass', kg, { bound })} (${say.measure('volume', kg / densityKgPerL, { bound })})`;
  const payload = say.measure('mass', beyond.payloadKg, MOST);
  const burnt = fuel(beyond.burnKg, Math.min(...densities), 'least');
  const left = fuel(beyond.leftKg, Math.max(...densities), 'most');
  return say.text(m.pilotLimits_takeOffUpPlan, { payload, burnt, left });
}

export function governedBy({ say }: PackContext, governing: Governing): string {
  return say.text(m.pilotLimits_limited, { governing: say.text(GOVERNING[governing]) });
}

function row(name: string, measure: BothSystems, note = ''): LimitRow {
  return { name, measure, note };
}
