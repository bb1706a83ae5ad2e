import { tanksOf } from '../../calc/loading/fuel.ts';
import type { Governing } from '../../calc/loading/load-limits.ts';
import { isSeat, loadStationsOf } from '../../calc/loading/load-space.ts';
import { MAX, MIN } from '../../text/figure.ts';
import type { Bound } from '../../text/formatter.ts';
import * as m from '../../text/generated/messages.ts';
import type { Message } from '../../text/message.ts';
import type { PackContext } from '../context.ts';
import { type BothSystems, bothSystems } from './both-systems.ts';

const GOVERNING: Readonly<Record<Governing, Message>> = {
  'maximum-mass': m.pilotLimits_maximumMass,
  envelope: m.pilotLimits_topEnvelope,
  'zero-fuel-mass': m.maximumZeroFuelMass,
  'landing-mass': m.maximumLandingMass,
  'non-lifting-mass': m.maximumNonLiftingMass,
  'joint-limits': m.pilotLimits_combinedLimitsSeatsBaggage,
  places: m.pilotLimits_limitsSeatsBaggage,
};

/** Names of the useful load, by what the aircraft can carry. */
const NAMES = {
  baggage: { fuel: m.crewBaggageFuelTogether, dry: m.pilotLimits_crewBaggageTogether },
  crew: { fuel: m.pilotLimits_crewFuelTogether, dry: m.pilotLimits_crewTogether },
} as const;

/** A limit for a pilot: name, value and the reason for it. */
export interface LimitRow {
  readonly [name: string]: string | BothSystems;
  name: string;
  measure: BothSystems;
  /** Empty if there is nothing to add. */
  note: string;
}

/** Returns the mass limits of an aircraft that its documents state. */
export function massLimitRows({ visit, fmt }: PackContext): LimitRow[] {
  const { aircraft } = visit;
  const most = (name: Message, massKg: number | undefined): LimitRow[] =>
    massKg === undefined ? [] : [row(fmt.text(name), bothSystems(fmt, 'mass', massKg, MAX))];
  return [
    ...most(m.maximumMass, aircraft.maximumMassKg),
    ...most(m.pilotLimits_massWithExternalLoad, aircraft.maximumMassWithExternalLoadKg),
    ...most(m.maximumZeroFuelMass2, aircraft.maximumZeroFuelMassKg),
    ...most(m.maximumLandingMass2, aircraft.maximumLandingMassKg),
    ...most(m.pilotLimits_nonLifting, aircraft.nonLifting?.maximumMassKg),
    ...(aircraft.minimumMassKg === undefined
      ? []
      : [row(fmt.text(m.pilotLimits_minimumFlyingMass), bothSystems(fmt, 'mass', aircraft.minimumMassKg, MIN))]),
  ];
}

/** Returns the max. loads, each with the limit that is met first, and the min. solo pilot. */
export function loadLimitRows(context: PackContext): LimitRow[] {
  const { visit, results, fmt } = context;
  const { loading } = results;
  if (!loading) return [];
  const { usefulLoad, fullTanksPayload } = loading.limits;
  const hasTanks = tanksOf(visit.aircraft).length > 0;
  const hasBaggage = loadStationsOf(visit.aircraft).some((station) => !isSeat(station));
  return [
    row(
      fmt.text(NAMES[hasBaggage ? 'baggage' : 'crew'][hasTanks ? 'fuel' : 'dry']),
      bothSystems(fmt, 'mass', usefulLoad.kg, MAX),
      usefulLoadNote(context),
    ),
    ...(hasTanks
      ? [
          row(
            fmt.text(hasBaggage ? m.leftCrewBaggageFull : m.pilotLimits_leftCrewFull),
            bothSystems(fmt, 'mass', fullTanksPayload.kg, MAX),
            fullTanksNote(context),
          ),
        ]
      : []),
    ...leastPilotRows(context),
  ];
}

/** Returns the min. solo pilot, as a lower limit. */
function leastPilotRows({ visit, results, fmt }: PackContext): LimitRow[] {
  const least = results.loading?.leastPilot;
  if (!least) return [];
  const pilots = visit.aircraft.stations.filter(({ kind }) => kind === 'pilot');
  const seat = pilots.length > 1 ? (pilots.find(({ id }) => id === least.station)?.name ?? '') : '';
  const why = {
    placard: '',
    custom: fmt.text(m.pilotLimits_customAircraftStatesNone),
    envelope: fmt.text(m.pilotLimits_envelope),
    'minimum-mass': fmt.text(m.pilotLimits_minimumMass),
  }[least.governedBy];
  const measure =
    least.kg === undefined ? { value: fmt.text(m.noneAllowed), other: '' } : bothSystems(fmt, 'mass', least.kg, MIN);
  return [row(fmt.text(m.leastSoloPilot), measure, [seat, why].filter(Boolean).join(', '))];
}

/** Returns the limit that the useful load meets first. */
export function usefulLoadNote(context: PackContext): string {
  const { results, fmt, visit } = context;
  const { governedBy: governing } = results.loading?.limits.usefulLoad ?? {};
  if (governing === undefined) return '';
  const isToLand = governing === 'landing-mass' && tanksOf(visit.aircraft).length > 0;
  return isToLand
    ? fmt.text(m.pilotLimits_landOnce, { governedBy: governedBy(context, governing) })
    : governedBy(context, governing);
}

/**
 * Returns the limit that a payload meets first; for the landing mass, also the load beyond it that may take off, and
 * the fuel to burn for it.
 */
export function fullTanksNote(context: PackContext): string {
  const { results, fmt } = context;
  const { loading } = results;
  if (!loading) return '';
  const { fullTanksPayload } = loading.limits;
  const governing = governedBy(context, fullTanksPayload.governedBy);
  if (fullTanksPayload.governedBy === 'landing-mass') return `${landingNote(context, governing)}. ${burnText(context)}`;
  return fullTanksPayload.kg < 0 ? fmt.text(m.pilotLimits_fullTanksAloneToo, { governing }) : governing;
}

function landingNote({ results, fmt }: PackContext, governing: string): string {
  return (results.loading?.limits.fullTanksPayload.kg ?? 0) < 0
    ? fmt.text(m.pilotLimits_fullTanksCannotLand, { governing })
    : fmt.text(m.pilotLimits_landOnceFullTanks, { governing });
}

/**
 * Returns kilograms and volume, for the tank gauges: fuel used at the lowest density aboard and fuel left at the
 * highest, so that neither volume is optimistic.
 */
function burnText({ visit, results, fmt }: PackContext): string {
  const beyond = results.loading?.limits.afterBurn;
  if (!beyond) return fmt.text(m.pilotLimits_moreOnlyIfMuch);
  const densities = tanksOf(visit.aircraft).map(({ densityKgPerL }) => densityKgPerL);
  const fuel = (kg: number, densityKgPerL: number, bound: Bound): string =>
    `${fmt.measure('mass', kg, { bound })} (${fmt.measure('volume', kg / densityKgPerL, { bound })})`;
  const payload = fmt.measure('mass', beyond.payloadKg, MAX);
  const burnt = fuel(beyond.burnKg, Math.min(...densities), 'least');
  const left = fuel(beyond.leftKg, Math.max(...densities), 'most');
  return fmt.text(m.pilotLimits_takeOffUpPlan, { payload, burnt, left });
}

export function governedBy({ fmt }: PackContext, governing: Governing): string {
  return fmt.text(m.pilotLimits_limited, { governing: fmt.text(GOVERNING[governing]) });
}

function row(name: string, measure: BothSystems, note = ''): LimitRow {
  return { name, measure, note };
}
