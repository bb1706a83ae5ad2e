import { aircraftInCategory } from '../../calc/configurations/configured.ts';
import { envelopeCorners } from '../../calc/loading/aircraft-envelope.ts';
import type { SuspensionRow } from '../../calc/loading/class-loading-result.ts';
import { tanksAndWaterOf, waterTanksOf } from '../../calc/loading/fuel.ts';
import { classDataOf } from '../../record/classes/index.ts';
import type { Aircraft } from '../../record/visit.ts';
import { DASH } from '../../text/dash.ts';
import { MAX, MIN } from '../../text/figure.ts';
import * as m from '../../text/generated/messages.ts';
import type { PackContext } from '../context.ts';
import type { View } from '../render.ts';
import { durationText } from './duration.ts';
import { governedBy } from './pilot-limits.ts';
import { type Column, sectionOf, tableOf } from './table-section.ts';
import { waterSection } from './water-section.ts';

/** Returns what is computed in place of an envelope or in addition to it, each a section: categories, cockpit loads, hang positions, water, energy. */
export function classSections(context: PackContext): View[] {
  return [
    ...categorySection(context),
    ...cockpitSection(context),
    ...suspensionSection(context),
    ...waterSection(context),
    ...energySection(context),
  ];
}

/** Returns the cautions of the class, each a sentence. */
export function classCautions({ visit, fmt }: PackContext): string[] {
  const { cautions, waterCautions = [] } = classDataOf(visit.aircraft);
  return [
    ...cautions,
    ...(waterTanksOf(visit.aircraft).length > 0 ? waterCautions : []),
    ...(visit.aircraft.energyStores ? [m.class_highVoltage] : []),
  ].map((caution) => fmt.text(caution));
}

const BY = {
  'take-off-mass': m.classRows_byTakeOffMass,
  occupants: m.classRows_byOccupants,
  'front-occupant': m.classRows_byFrontOccupant,
} as const;

/** Returns the positions of hang point or attachment, as stated and for round masses of persons. */
function suspensionSection({ visit, results, fmt }: PackContext): View[] {
  const { suspension } = visit.aircraft;
  const table = results.loading?.suspension;
  if (!suspension || !table) return [];
  const massUnit = fmt.unit('mass');
  const stated = suspension.positions.map(({ name, armMm, fromMassKg, toMassKg, note }) => [
    name,
    armMm === undefined ? DASH : fmt.number('arm', armMm),
    fromMassKg === undefined ? DASH : fmt.number('mass', fromMassKg, MIN),
    toMassKg === undefined ? DASH : fmt.number('mass', toMassKg, MAX),
    note ?? '',
  ]);
  const forCrews = table.rows.map((row) => [
    crewText(fmt, row),
    fmt.number('mass', row.decidesKg),
    row.positions.join(', ') || fmt.text(m.classRows_noPosition),
  ]);
  const position = fmt.text(m.loadingSheet_position);
  return [
    sectionOf(fmt.text(m.loadingSheet_hangPositions), [
      tableOf(
        `${fmt.text(BY[suspension.by])} ${fmt.text(m.loadingSheet_masses, { massUnit })}`,
        [
          ['name', position],
          ['num', fmt.text(m.arm, { armUnit: fmt.unit('arm') })],
          ['num', fmt.text(m.loadingSheet_fromMass)],
          ['num', fmt.text(m.loadingSheet_toMass)],
          ['text', fmt.text(m.note)],
        ],
        stated,
      ),
      tableOf(
        fmt.text(m.loadingSheet_positionForCrew),
        [
          ['name', fmt.text(m.loadingSheet_crew)],
          ['num', fmt.text(m.loadingSheet_massThatDecides, { massUnit })],
          ['text', position],
        ],
        forCrews,
      ),
    ]),
  ];
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

/** Returns the min. and max. cockpit load of each state. */
function cockpitSection({ visit, results, fmt }: PackContext): View[] {
  const loads = results.loading?.cockpitLoads ?? [];
  if (loads.length === 0) return [];
  const rows = loads.map(({ state, minimum, maximum }) => [
    state === '' ? fmt.text(m.classRows_asItStands) : state,
    minimum ? fmt.measure('mass', minimum.kg, MIN) : fmt.text(m.noneAllowed),
    minimum ? fmt.text(COCKPIT[minimum.governedBy]) : DASH,
    maximum ? fmt.measure('mass', maximum.kg, MAX) : DASH,
    maximum ? fmt.text(COCKPIT[maximum.governedBy]) : DASH,
  ]);
  const by = fmt.text(m.loadingSheet_by);
  const columns: Column[] = [
    ['name', fmt.text(m.loadingSheet_state)],
    ['num', fmt.text(m.least)],
    ['text', by],
    ['num', fmt.text(m.most2)],
    ['text', by],
  ];
  return [
    sectionOf(fmt.text(m.loadingSheet_cockpitLoad), [
      tableOf(
        fmt.text(
          tanksAndWaterOf(visit.aircraft).length > 0
            ? m.loadingSheet_cockpitLoadAlone
            : m.loadingSheet_cockpitLoadNoTanks,
        ),
        columns,
        rows,
      ),
    ]),
  ];
}

function categorySection(context: PackContext): View[] {
  const { results, fmt, visit } = context;
  const categories = results.loading?.categories ?? [];
  if (categories.length === 0) return [];
  const rows = categories.map(({ name, limits, verdicts }) => [
    name,
    fmt.measure('mass', limits.usefulLoad.kg, MAX),
    governedBy(context, limits.usefulLoad.governedBy),
    fmt.measure('mass', limits.fullTanksPayload.kg, MAX),
    verdicts.flatMap(({ state }, index) => (state === 'inside' ? [String(index + 1)] : [])).join(', ') ||
      fmt.text(m.none),
  ]);
  const columns: Column[] = [
    ['name', fmt.text(m.loadingSheet_category)],
    ['num', fmt.text(m.loadingSheet_usefulLoad)],
    ['text', fmt.text(m.loadingSheet_by)],
    ['num', fmt.text(m.loadingSheet_withFullTanks)],
    ['text', fmt.text(m.loadingSheet_insideNo)],
  ];
  return [
    sectionOf(
      fmt.text(m.loadingSheet_categories),
      [tableOf(fmt.text(m.loadingSheet_categoriesSameEmptyMass), columns, rows)],
      (visit.aircraft.categories ?? []).map((category) => categoryLine(context, category)),
    ),
  ];
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
    maximum: fmt.measure('mass', inCategory.maximumMassKg, MAX),
    corners,
  });
  return unused.length === 0 ? limits : `${limits} ${fmt.text(m.classRows_unused, { stations: unused.join(', ') })}`;
}

const kwhText = (fmt: PackContext['fmt'], kwh: number): string => fmt.plain(kwh, 1, 'most');

function energySection(context: PackContext): View[] {
  const { results, fmt } = context;
  const { energy } = results;
  if (!energy) return [];
  const rows = energy.stores.map(({ name, usableKwh, cyclesLeft }) => [
    name,
    kwhText(fmt, usableKwh),
    cyclesLeft === undefined ? DASH : String(cyclesLeft),
  ]);
  const columns: Column[] = [
    ['name', fmt.text(m.loadingSheet_battery)],
    ['num', fmt.text(m.loadingSheet_usableKwh)],
    ['num', fmt.text(m.loadingSheet_cyclesLeft)],
  ];
  return [
    sectionOf(
      fmt.text(m.loadingSheet_energy),
      [tableOf(fmt.text(m.loadingSheet_energyFullToLeast), columns, rows)],
      [enduranceLine(context)],
    ),
  ];
}

/** Returns the endurance above the reserve, rounded down; empty without traction batteries. */
export function enduranceLine({ results, fmt }: PackContext): string {
  const { energy } = results;
  if (!energy) return '';
  return energy.endurance
    ? fmt.text(m.classRows_endurance, {
        duration: durationText(Math.max(0, energy.endurance.minutes), fmt),
        reserve: kwhText(fmt, energy.endurance.reserveKwh),
      })
    : fmt.text(m.classRows_enduranceNotKnown);
}

/** States that the limits of the type allow loadings outside the envelope; empty if they do not. */
export function pilotComputesLine({ findings, fmt }: PackContext): string {
  return findings.some(({ code }) => code === 'PILOT_COMPUTES_LOADING') ? fmt.text(m.classRows_pilotComputes) : '';
}
