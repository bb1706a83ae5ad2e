import { classDataOf } from '../../record/classes/index.ts';
import type { Aircraft, Visit } from '../../record/visit.ts';
import { factorOf } from '../../units/quantity.ts';
import { aircraftInCategory } from '../configurations/configured.ts';
import type { MassMoment } from '../mass/mass-moment.ts';
import { isAtLeast } from '../numbers/limit-met.ts';
import { envelopeIn } from './aircraft-envelope.ts';
import type { Loading } from './boundary.ts';
import { burnPathOf } from './burn-path.ts';
import type { CockpitLoad, SuspensionTable } from './class-loading-result.ts';
import { cockpitLoads } from './cockpit-loads.ts';
import { type CrewFuelTable, crewFuelTable } from './crew-fuel-table.ts';
import { type EmptyAircraft, lateralOfEmpty } from './empty-aircraft.ts';
import type { Envelope } from './envelope.ts';
import { type Extremes, loadingExtremes } from './extremes.ts';
import { fullFuelKg, tanksOf, usableFuel } from './fuel.ts';
import { type LeastPilot, leastPilot } from './least-pilot.ts';
import { type LoadLimits, loadLimitsOf } from './load-limits.ts';
import { loadStationsOf } from './load-space.ts';
import { loadingOf } from './loading-of.ts';
import type { GroupProposal } from './loading-result.ts';
import { groupProposals } from './proposal.ts';
import { minimumSoloKg } from './solo.ts';
import { suspensionTable } from './suspension.ts';
import { type JudgedBy, judgeOf, type Verdict } from './verdict.ts';

/** Loadings on every loading sheet. */
export type ShownLoading = 'foremost' | 'rearmost' | 'standard-pilot' | 'two-standard-persons';

export interface NamedLoading {
  kind: ShownLoading;
  path: Loading[];
  verdict: Verdict;
}

export interface LoadingSheet {
  envelope: Envelope | undefined;
  /** Undefined if the min. permitted load is over the maximum mass or another limit. */
  extremes: Extremes | undefined;
  loadings: NamedLoading[];
  table: CrewFuelTable;
  /** Min. solo pilot by the envelope only; undefined without an envelope, or if nobody may fly alone. */
  minimumSoloKg: number | undefined;
  /** Min. solo pilot by envelope, aircraft and regime; undefined without a seat for a pilot. */
  leastPilot: LeastPilot | undefined;
  /** Max. loads and their limits. */
  limits: LoadLimits;
  /** Joint limits that would each keep every permitted loading inside; empty if all are. */
  proposals: GroupProposal[];
  /** Positions of hang point or attachment; undefined if the record has no table. */
  suspension: SuspensionTable | undefined;
  /** Min. and max. cockpit load of each state; empty unless the class has them. */
  cockpitLoads: CockpitLoad[];
  categories: CategorySheet[];
}

/** Limits of one category, with the same empty mass. */
export interface CategorySheet {
  id: string;
  name: string;
  envelope: Envelope | undefined;
  limits: LoadLimits;
  /** Verdict on each of the named loadings, in this category. */
  verdicts: Verdict[];
}

export interface LoadingSettings {
  leastPilotKg: number;
  standardPersonKg: number;
}

/**
 * Returns the content of the loading sheet, for one empty condition.
 *
 * @source common practice, no source
 */
export function loadingSheet(
  visit: Pick<Visit, 'aircraft' | 'units'>,
  empty: EmptyAircraft,
  settings: LoadingSettings,
): LoadingSheet {
  const { aircraft } = visit;
  const envelope = envelopeIn(aircraft);
  const options = { empty, leastPilotKg: settings.leastPilotKg };
  const extremes = loadingExtremes(aircraft, options, envelope);
  const soloKg = envelope && minimumSoloKg(aircraft, options, envelope);
  const pilot = leastPilot(aircraft, envelope && (soloKg ?? 'nobody'), {
    customKg: settings.leastPilotKg,
    emptyKg: empty.massKg,
  });
  const burn = burnPathOf(aircraft);
  const lateral = lateralOfEmpty(empty);
  const judge = judgeOf(aircraft, { envelope, leastPilot: pilot, lateral });
  const named = (kind: ShownLoading, loading: Loading): NamedLoading => ({
    kind,
    path: burn(loading),
    verdict: judge(loading),
  });
  const loadings = [
    ...(extremes && envelope
      ? [named('foremost', extremes.forward.loading), named('rearmost', extremes.aft.loading)]
      : []),
    ...standardCrews(visit, empty, settings.standardPersonKg).map(({ kind, loading }) => named(kind, loading)),
  ];
  const isInside = extremes?.margins.every(({ margin }) => isAtLeast(margin, 0)) ?? true;
  return {
    envelope,
    extremes,
    loadings,
    table: crewFuelTable(aircraft, empty, crewMasses(visit), judge),
    minimumSoloKg: soloKg,
    leastPilot: pilot,
    limits: loadLimitsOf(aircraft, empty.massKg),
    proposals: envelope && !isInside ? groupProposals(aircraft, options, envelope) : [],
    suspension: suspensionTable(aircraft, empty.massKg, crewMasses(visit)),
    cockpitLoads:
      envelope && classDataOf(aircraft).computes.includes('cockpit-load')
        ? cockpitLoads(aircraft, options, envelope)
        : [],
    categories: (aircraft.categories ?? []).map((category) =>
      categorySheet(category, { aircraft, empty, loadings, leastPilot: pilot, lateral }),
    ),
  };
}

type Category = NonNullable<Aircraft['categories']>[number];

interface InEveryCategory extends Pick<JudgedBy, 'leastPilot' | 'lateral'> {
  aircraft: Aircraft;
  empty: EmptyAircraft;
  loadings: readonly NamedLoading[];
}

/** Returns the limits of a category, and what they say of the named loadings. */
function categorySheet(
  category: Category,
  { aircraft, empty, loadings, leastPilot: pilot, lateral }: InEveryCategory,
): CategorySheet {
  const inCategory = aircraftInCategory(aircraft, category);
  const envelope = envelopeIn(inCategory);
  const judge = judgeOf(inCategory, { envelope, leastPilot: pilot, lateral });
  return {
    id: category.id,
    name: category.name,
    envelope,
    limits: loadLimitsOf(inCategory, empty.massKg),
    verdicts: loadings.map(({ path: [loading] }) => judge(loading ?? { ...empty, load: {} })),
  };
}

/** Returns one and two standard persons without baggage, with the fuel that the maximum mass allows. */
function standardCrews(
  visit: Pick<Visit, 'aircraft'>,
  empty: MassMoment,
  personKg: number,
): { kind: ShownLoading; loading: Loading }[] {
  const { aircraft } = visit;
  const seats = loadStationsOf(aircraft);
  const pilot = seats.filter(({ kind }) => kind === 'pilot').slice(0, 1);
  const passenger = seats.filter(({ kind }) => kind === 'passenger').slice(0, 1);
  const crews = [
    { kind: 'standard-pilot' as const, used: pilot },
    ...(passenger.length > 0 ? [{ kind: 'two-standard-persons' as const, used: [...pilot, ...passenger] }] : []),
  ];
  return crews.map(({ kind, used }) => {
    const crew = Object.fromEntries(used.map(({ id, maximumMassKg }) => [id, Math.min(personKg, maximumMassKg)]));
    const dry = loadingOf(aircraft, empty, crew);
    const share = fuelShare(aircraft.maximumMassKg - dry.massKg, visit);
    const fuel = tanksOf(aircraft).map((tank) => [tank.id, usableFuel(tank, tank.capacityL).massKg * share]);
    return { kind, loading: loadingOf(aircraft, empty, { ...crew, ...Object.fromEntries(fuel) }) };
  });
}

function fuelShare(roomKg: number, visit: Pick<Visit, 'aircraft'>): number {
  const fullKg = fullFuelKg(visit.aircraft);
  return fullKg > 0 ? Math.min(1, Math.max(0, roomKg / fullKg)) : 0;
}

/** Persons' masses for the rows of the crew and fuel table, in round figures of the record's unit. */
const ROWS = { kg: { from: 50, step: 10 }, lb: { from: 120, step: 20 } } as const;
const MAX_ROWS = 8;

function crewMasses(visit: Pick<Visit, 'units'>): number[] {
  const { from, step } = ROWS[visit.units.mass];
  const unitKg = factorOf('mass', visit.units);
  return Array.from({ length: MAX_ROWS }, (_, row) => (from + step * row) * unitKg);
}
