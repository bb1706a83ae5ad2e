import { aircraftInCategory } from '../../calc/configurations/configured.ts';
import { envelopeCorners } from '../../calc/loading/aircraft-envelope.ts';
import type { SuspensionRow } from '../../calc/loading/class-loading-result.ts';
import { classDataOf } from '../../record/classes/index.ts';
import type { Aircraft } from '../../record/visit.ts';
import { DASH } from '../../text/dash.ts';
import * as m from '../../text/generated/messages.ts';
import type { PackContext } from '../context.ts';
import type { View } from '../render.ts';
import { durationText } from './duration.ts';
import { governedBy } from './pilot-limits.ts';
import { waterRows } from './water-rows.ts';

/** Returns what is computed in place of an envelope or beside it: hang positions, cockpit loads, categories, energy. */
export function classRows(context: PackContext): View {
  return {
    ...suspensionRows(context),
    ...cockpitRows(context),
    ...categoryRows(context),
    ...energyRows(context),
    ...waterRows(context),
    pilotComputes: pilotComputesLine(context),
  };
}

/** Returns the cautions of the class, each a sentence. */
export function classCautions({ visit, fmt }: PackContext): string[] {
  const electric = visit.aircraft.energyStores ? [fmt.text(m.class_highVoltage)] : [];
  return [...classDataOf(visit.aircraft).cautions.map((caution) => fmt.text(caution)), ...electric];
}

const BY = {
  'take-off-mass': m.classRows_byTakeOffMass,
  occupants: m.classRows_byOccupants,
  'front-occupant': m.classRows_byFrontOccupant,
} as const;

/** Returns the positions of hang point or attachment, as stated and for round masses of persons. */
function suspensionRows({ visit, results, fmt }: PackContext): View {
  const { suspension } = visit.aircraft;
  const table = results.loading?.suspension;
  if (!suspension || !table) return { hasSuspension: false };
  return {
    hasSuspension: true,
    suspensionBy: fmt.text(BY[suspension.by]),
    suspensionPositions: suspension.positions.map(({ name, armMm, fromMassKg, toMassKg, note }) => ({
      name,
      arm: armMm === undefined ? DASH : fmt.number('arm', armMm),
      from: fromMassKg === undefined ? DASH : fmt.number('mass', fromMassKg, { bound: 'least' }),
      to: toMassKg === undefined ? DASH : fmt.number('mass', toMassKg, { bound: 'most' }),
      note: note ?? '',
    })),
    suspensionRows: table.rows.map((row) => ({
      crew: crewText(fmt, row),
      decides: fmt.number('mass', row.decidesKg),
      positions: row.positions.join(', ') || fmt.text(m.classRows_noPosition),
    })),
  };
}

function crewText(fmt: PackContext['fmt'], { persons, eachKg }: SuspensionRow): string {
  const each = fmt.number('mass', eachKg);
  return persons === 1 ? fmt.text(m.loadingSheet_pilotAlone, { each }) : fmt.text(m.loadingSheet_twoEach, { each });
}

const COCKPIT = {
  envelope: m.classRows_envelope,
  seat: m.classRows_seat,
  'maximum-mass': m.pilotLimits_maximumMass,
  'non-lifting-mass': m.maximumNonLiftingMass,
} as const;

/** Returns the least and the greatest cockpit load of each state. */
export function cockpitRows({ results, fmt }: PackContext): View {
  const loads = results.loading?.cockpitLoads ?? [];
  return {
    hasCockpitLoads: loads.length > 0,
    cockpitLoads: loads.map(({ state, least, most }) => ({
      state: state === '' ? fmt.text(m.classRows_asItStands) : state,
      least: least ? fmt.measure('mass', least.kg, { bound: 'least' }) : fmt.text(m.noneAllowed),
      leastBy: least ? fmt.text(COCKPIT[least.governedBy]) : DASH,
      most: most ? fmt.measure('mass', most.kg, { bound: 'most' }) : DASH,
      mostBy: most ? fmt.text(COCKPIT[most.governedBy]) : DASH,
    })),
  };
}

function categoryRows(context: PackContext): View {
  const { results, fmt } = context;
  const categories = results.loading?.categories ?? [];
  return {
    hasCategories: categories.length > 0,
    categoryLimits: (context.visit.aircraft.categories ?? []).map((category) => categoryLine(context, category)),
    categories: categories.map(({ name, limits, verdicts }) => ({
      name,
      useful: fmt.measure('mass', limits.usefulLoad.kg, { bound: 'most' }),
      usefulBy: governedBy(context, limits.usefulLoad.governedBy),
      payload: fmt.measure('mass', limits.fullTanksPayload.kg, { bound: 'most' }),
      inside:
        verdicts.flatMap(({ state }, index) => (state === 'inside' ? [String(index + 1)] : [])).join(', ') ||
        fmt.text(m.none),
    })),
  };
}

/** Returns maximum mass, corners and empty stations of a category, in a sentence. */
function categoryLine({ visit, fmt }: PackContext, category: NonNullable<Aircraft['categories']>[number]): string {
  const { aircraft } = visit;
  const inCategory = aircraftInCategory(aircraft, category);
  const corners = (envelopeCorners(inCategory) ?? [])
    .map(({ massKg, armMm }) => `${fmt.measure('mass', massKg)} ${fmt.measure('arm', armMm)}`)
    .join('; ');
  const unused = (category.unusedStations ?? []).map(
    (id) => aircraft.stations.find((station) => station.id === id)?.name ?? id,
  );
  const limits = fmt.text(m.classRows_category, {
    name: category.name,
    maximum: fmt.measure('mass', inCategory.maximumMassKg, { bound: 'most' }),
    corners,
  });
  return unused.length === 0 ? limits : `${limits} ${fmt.text(m.classRows_unused, { stations: unused.join(', ') })}`;
}

/** Returns usable energy and endurance, rounded down. */
export function energyRows({ results, fmt }: PackContext): View {
  const { energy } = results;
  if (!energy) return { hasEnergy: false };
  const kwh = (value: number): string => fmt.plain(Math.floor(value * 10 + 1e-9) / 10, 1);
  return {
    hasEnergy: true,
    stores: energy.stores.map(({ name, usableKwh, cyclesLeft }) => ({
      name,
      usable: kwh(usableKwh),
      cycles: cyclesLeft === undefined ? DASH : String(cyclesLeft),
    })),
    usableEnergy: kwh(energy.usableKwh),
    endurance: energy.endurance
      ? fmt.text(m.classRows_endurance, {
          duration: durationText(Math.max(0, energy.endurance.minutes), fmt),
          reserve: kwh(energy.endurance.reserveKwh),
        })
      : fmt.text(m.classRows_enduranceNotKnown),
  };
}

/** States that the limits of the type allow loadings outside the envelope; empty if they do not. */
export function pilotComputesLine({ findings, fmt }: PackContext): string {
  return findings.some(({ code }) => code === 'PILOT_COMPUTES_LOADING') ? fmt.text(m.classRows_pilotComputes) : '';
}
