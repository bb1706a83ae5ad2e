import type { Loading } from '../../calc/loading/boundary.ts';
import type { CrewAboard, CrewFuelCell } from '../../calc/loading/crew-fuel-table.ts';
import { armOn, type Envelope, type LimitPiece } from '../../calc/loading/envelope.ts';
import { tanksOf } from '../../calc/loading/fuel.ts';
import type { LoadingSheet, NamedLoading } from '../../calc/loading/loading-sheet.ts';
import { cgMm } from '../../calc/mass/mass-moment.ts';
import { describeLoading } from '../../gate/describe-loading.ts';
import { DASH } from '../../text/dash.ts';
import { MAX, MIN } from '../../text/figure.ts';
import * as m from '../../text/generated/messages.ts';
import { envelopeChart } from '../chart/envelope-chart.ts';
import { lateralChart } from '../chart/lateral-chart.ts';
import { configurationContexts } from '../configuration-contexts.ts';
import type { PackContext } from '../context.ts';
import type { DocumentInstance } from '../document.ts';
import { loadingInCaption, loadingName } from '../loading-name.ts';
import type { View } from '../render.ts';
import { accepted } from './accepted.ts';
import { bothSystems, inBrackets } from './both-systems.ts';
import { unitHeads } from './change-rows.ts';
import { classSections, pilotComputesLine } from './class-sections.ts';
import { cockpitCard } from './cockpit-card.ts';
import { common, sources } from './common.ts';
import { lateralSection, noLimitsLine } from './lateral-section.ts';

/** Returns one sheet for each configuration whose empty mass is known, the one of the visit first. */
export function loadingSheets(context: PackContext): DocumentInstance[] {
  if (!context.results.loading) return [];
  const { fmt } = context;
  return configurationContexts(context).map(({ articleId, name, context: its }) => ({
    id: articleId,
    title: name === undefined ? fmt.text(m.loadingSheet) : fmt.text(m.loadingSheet_ofConfiguration, { name }),
    view: { ...loadingSheetView(its), articleId, configurationName: name ?? '' },
  }));
}

export function loadingSheetView(context: PackContext): View {
  const { fmt } = context;
  const sheet = context.results.loading;
  if (!sheet) throw new Error('Cannot fill the loading sheet: nothing was computed');
  return {
    ...common(context),
    ...accepted(context, '/aircraft'),
    ...unitHeads(context),
    hasEnvelope: sheet.envelope !== undefined,
    hasTanks: tanksOf(context.visit.aircraft).length > 0,
    chart: envelopeChart(context, sheet),
    caption: sheet.loadings.map(({ kind }, index) => `${index + 1} ${fmt.value(loadingInCaption(kind))}`).join(', '),
    loadings: sheet.loadings.map((loading, index) => loadingRow(context, loading, index)),
    margins: marginLines(context, sheet),
    hasMargins: (sheet.extremes?.margins ?? []).length > 0,
    limits: (context.visit.aircraft.loadingLimits ?? []).map(
      ({ text, maximumMassKg }) => `${text} (${fmt.measure('mass', maximumMassKg, MAX)})`,
    ),
    hasLimits: (context.visit.aircraft.loadingLimits ?? []).length > 0,
    solo: soloLine(context, sheet),
    articleId: 'loading-sheet',
    configurationName: '',
    pilotComputes: pilotComputesLine(context),
    sections: [...classSections(context), ...lateralSection(context)],
    noLateralLimits: noLimitsLine(context),
    lateralChart: lateralChart(context),
    ...table(context, sheet),
    ...cockpitCard(context),
    ...sources(
      ...(sheet.envelope ? [fmt.text(m.loadingSheet_foremostRearmostExactExtremes)] : []),
      fmt.text(m.loadingSheet_validEmptyMassEquipment),
    ),
  };
}

const VERDICTS = {
  inside: m.loadingSheet_inside,
  outside: m.outside,
  'no-pilot': m.loadingSheet_noPilot,
  'no-solo': m.loadingSheet_notAlone,
  'too-light': m.loadingSheet_pilotTooLight,
  'too-heavy': m.loadingSheet_tooHeavy,
  'limit-exceeded': m.loadingSheet_overLimit,
  'outside-laterally': m.outside,
  'too-light-in-flight': m.loadingSheet_tooLightInFlight,
} as const;

function loadingRow(context: PackContext, { kind, path, verdict }: NamedLoading, index: number): View {
  const { fmt, visit, results } = context;
  const { envelope, leastPilot } = results.loading ?? {};
  const hasEnvelope = envelope !== undefined;
  const start = path[0];
  const end = path.at(-1);
  const hasTanks = tanksOf(visit.aircraft).length > 0;
  const isInside = verdict.state === 'inside';
  return {
    number: String(index + 1),
    name: fmt.value(loadingName(kind)),
    aboard: start ? fmt.value(describeLoading(visit, start, leastPilot?.kg)) : DASH,
    mass: start ? loadedMass(context, start) : DASH,
    burnt: hasTanks && {
      mass: end ? loadedMass(context, end) : DASH,
      arm: hasEnvelope && end ? armText(fmt, end, isInside ? envelope : undefined) : '',
      hasArm: hasEnvelope,
    },
    arms: hasEnvelope && {
      start: start ? armText(fmt, start, isInside ? envelope : undefined) : DASH,
    },
    verdict: isInside && !hasEnvelope ? fmt.text(m.loadingSheet_withinMassLimits) : fmt.text(VERDICTS[verdict.state]),
  };
}

/** Returns a mass, never printed above its limit if it is within. */
function loadedMass({ fmt, visit }: PackContext, { massKg }: Loading): string {
  return fmt.number('mass', massKg, { bound: fmt.inward('mass', massKg, { most: visit.aircraft.maximumMassKg }) });
}

/** Returns a centre of gravity; within an envelope it is printed within its limits at that mass. */
function armText(fmt: PackContext['fmt'], loading: Loading, envelope: Envelope | undefined): string {
  const armMm = cgMm(loading);
  const at = (pieces: readonly LimitPiece[] = []): number[] =>
    pieces
      .filter(({ fromKg, toKg }) => fromKg <= loading.massKg && loading.massKg <= toKg)
      .map((piece) => armOn(piece, loading.massKg));
  const limits = { least: Math.max(...at(envelope?.reach.forward)), most: Math.min(...at(envelope?.reach.aft)) };
  return fmt.number('arm', armMm, { bound: fmt.inward('arm', armMm, limits) });
}

/** Direction of the limit of each side. */
const BOUNDS = { forward: 'least', aft: 'most', below: 'least', above: 'most' } as const;

function marginLines(context: PackContext, sheet: LoadingSheet): string[] {
  const { fmt, visit, results } = context;
  const spread = results.schedule?.expanded?.armMm;
  const lines = (sheet.extremes?.margins ?? []).map(({ side, margin, loading, limit }) => {
    const quantity = side === 'below' || side === 'above' ? 'mass' : 'arm';
    const mass = `${loadedMass(context, loading)}\u00a0${fmt.unit('mass')}`;
    const place = `${mass}, ${fmt.value(describeLoading(visit, loading, sheet.leastPilot?.kg))}`;
    const within = fmt.measure(quantity, margin, { signed: true, extra: 1, bound: 'most' });
    return fmt.text(m.loadingSheet_nearestLimit, {
      side: fmt.term(side),
      quantity: fmt.measure(quantity, limit, { bound: BOUNDS[side] }),
      within,
      place,
    });
  });
  return spread === undefined
    ? lines
    : [
        ...lines,
        fmt.text(m.loadingSheet_uncertaintyEmptyCentreGravity, { spread: fmt.measure('arm', spread, { extra: 1 }) }),
      ];
}

/** Returns the min. solo pilot of the cockpit card, with the reason for it. */
function soloLine({ fmt, visit, regime }: PackContext, { leastPilot: least, envelope }: LoadingSheet): string {
  if (!least) return fmt.text(m.loadingSheet_aircraftNoSeatPilot);
  const seat = visit.aircraft.stations.find(({ id }) => id === least.station)?.name ?? '';
  if (least.kg === undefined) return fmt.text(m.loadingSheet_noPilotWithinSeat, { seat });
  const from = inBrackets(bothSystems(fmt, 'mass', least.kg, MIN));
  if (least.governedBy === 'envelope' && tanksOf(visit.aircraft).length === 0)
    return fmt.text(m.loadingSheet_pilotMayFlyAlone, { seat, from });
  if (least.governedBy === 'envelope') return fmt.text(m.loadingSheet_pilotMayFlyAloneWithout, { seat, from });
  if (least.governedBy === 'minimum-mass') return fmt.text(m.loadingSheet_pilotByMinimumMass, { seat, from });
  const why =
    least.governedBy === 'placard'
      ? fmt.text(m.loadingSheet_aircraftStates)
      : fmt.text(m.loadingSheet_customBecauseAircraftStates, { regime: fmt.text(regime.title) });
  if (envelope) return fmt.text(m.loadingSheet_pilotMayFlyAloneEnvelope, { seat, from, why });
  const noLimits = fmt.text(m.loadingSheet_noLimitsCentreGravity);
  return `${noLimits}. ${fmt.text(m.loadingSheet_pilotMayFlyAlone2, { seat, from, why })}`;
}

function table({ fmt, visit }: PackContext, sheet: LoadingSheet): View {
  const hasTanks = tanksOf(visit.aircraft).length > 0;
  const places = visit.aircraft.stations.filter(({ kind }) => kind === 'baggage');
  const { maximumMassKg, maximumLandingMassKg = maximumMassKg } = visit.aircraft;
  return {
    hasBaggage: places.length > 0,
    order:
      places.length > MAX_LISTED
        ? fmt.text(m.loadingSheet_baggagePlacesFilledOrder)
        : places.length > 1
          ? fmt.text(m.loadingSheet_baggagePlacesFilledOrderEvery, {
              places: places.map(({ name }) => name).join(', '),
            })
          : '',
    moreWords: [
      ...(visit.aircraft.minimumMassKg === undefined ? [] : [fmt.text(m.loadingSheet_lightMeans)]),
      ...(visit.aircraft.lateralEnvelope ? [fmt.text(m.loadingSheet_sidewaysMeans)] : []),
    ].join(' '),
    landing:
      maximumLandingMassKg < maximumMassKg
        ? fmt.text(m.loadingSheet_loadsMayTakeOff, {
            maximumLandingMass: fmt.measure('mass', maximumLandingMassKg, MAX),
          })
        : '',
    fuelHeads: hasTanks
      ? sheet.table.usableL.map((usable) => fmt.number('volume', usable, MAX))
      : [places.length > 0 ? fmt.text(m.loadingSheet_baggage) : fmt.text(m.loadingSheet_allowed)],
    rows: sheet.table.rows.map(({ aboard, eachKg, cells }) => ({
      crew: crewText(fmt, aboard, fmt.number('mass', eachKg)),
      // Without a tank every share of fuel is the same: one column suffices.
      cells: (hasTanks ? cells : cells.slice(0, 1)).map((cell) => cellText(fmt, cell, places.length > 0)),
    })),
    hasRows: sheet.table.rows.length > 0,
    crews: crewSeats(visit, sheet, fmt),
  };
}

/** Max. number of seats listed by name in a sentence. */
const MAX_LISTED = 4;

function crewText(fmt: PackContext['fmt'], aboard: CrewAboard, each: string): string {
  if (aboard === 'solo') return fmt.text(m.loadingSheet_pilotAlone, { each });
  return aboard === 'two'
    ? fmt.text(m.loadingSheet_twoEach, { each })
    : fmt.text(m.loadingSheet_allSeatsEach, { each });
}

/** Returns the seats of each crew, if there are more seats than the crews of the table fill. */
function crewSeats({ aircraft }: PackContext['visit'], { table }: LoadingSheet, fmt: PackContext['fmt']): string {
  const nameOf = (id: string): string => aircraft.stations.find((station) => station.id === id)?.name ?? id;
  const of = (crew: CrewAboard): string[] =>
    table.seats.find(({ aboard }) => aboard === crew)?.stations.map(nameOf) ?? [];
  const [[pilot], [first, second]] = [of('solo'), of('two')];
  const seats = aircraft.stations.filter(({ kind }) => kind === 'pilot' || kind === 'passenger');
  if (pilot === undefined || Math.max(seats.length, aircraft.seats) <= 2) return '';
  const alone = fmt.text(m.loadingSheet_pilotAloneEveryOther, { pilot });
  return first === undefined || second === undefined
    ? alone
    : `${alone} ${fmt.text(m.loadingSheet_twoEveryOtherSeat, { first, second })}`;
}

const OUTSIDE = {
  forward: m.loadingSheet_forwardOut,
  aft: m.loadingSheet_aftOut,
  below: m.loadingSheet_belowOut,
  above: m.loadingSheet_aboveOut,
} as const;

const REFUSALS = {
  'no-pilot': m.loadingSheet_pilot,
  'no-solo': m.loadingSheet_pilot,
  'too-light': m.loadingSheet_pilot,
  'too-heavy': m.loadingSheet_heavy,
  'limit-exceeded': m.loadingSheet_limit,
  'outside-laterally': m.loadingSheet_sideways,
  'too-light-in-flight': m.loadingSheet_light,
} as const;

/**
 * Returns baggage, rounded down, so that the printed figure is always allowed; without a compartment, whether crew and
 * fuel are allowed.
 */
function cellText(fmt: PackContext['fmt'], cell: CrewFuelCell, hasBaggage: boolean): string {
  if ('refused' in cell) {
    const { refused } = cell;
    return fmt.text(refused.state === 'outside' ? OUTSIDE[refused.worst.side] : REFUSALS[refused.state]);
  }
  return hasBaggage ? fmt.number('mass', cell.baggageKg, MAX) : fmt.text(m.yes);
}
