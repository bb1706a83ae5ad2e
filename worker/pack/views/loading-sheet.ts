import { tanksOf } from '../../calc/fuel.ts';
import type { Loading } from '../../calc/loading/boundary.ts';
import type { CrewAboard, CrewFuelCell } from '../../calc/loading/crew-fuel-table.ts';
import { armOn, type Envelope, type LimitPiece } from '../../calc/loading/envelope.ts';
import type { LoadingSheet, NamedLoading } from '../../calc/loading-sheet.ts';
import { cgMm } from '../../calc/mass-moment.ts';
import { describeLoading } from '../../gate/describe-loading.ts';
import { DASH } from '../../text/dash.ts';
import { phrase } from '../../words/words.ts';
import { envelopeChart } from '../chart/envelope-chart.ts';
import type { PackContext } from '../context.ts';
import { loadingInCaption, loadingName } from '../loading-name.ts';
import type { View } from '../render.ts';
import { bothSystems, inBrackets } from './both-systems.ts';
import { unitHeads } from './change-rows.ts';
import { cockpitCard } from './cockpit-card.ts';
import { common, sources } from './common.ts';

export function loadingSheetView(context: PackContext): View {
  const { say } = context;
  const sheet = context.results.loading;
  if (!sheet) throw new Error('Cannot fill the loading sheet: nothing was computed');
  return {
    ...common(context),
    ...unitHeads(context),
    hasEnvelope: sheet.envelope !== undefined,
    hasTanks: tanksOf(context.visit.aircraft).length > 0,
    chart: envelopeChart(context, sheet),
    caption: sheet.loadings.map(({ kind }, index) => `${index + 1} ${loadingInCaption(kind, say)}`).join(', '),
    loadings: sheet.loadings.map((loading, index) => loadingRow(context, loading, index)),
    margins: marginLines(context, sheet),
    hasMargins: (sheet.extremes?.margins ?? []).length > 0,
    limits: (context.visit.aircraft.loadingLimits ?? []).map(
      ({ text, maximumMassKg }) => `${text} (${say.measure('mass', maximumMassKg, { bound: 'most' })})`,
    ),
    hasLimits: (context.visit.aircraft.loadingLimits ?? []).length > 0,
    solo: soloLine(context, sheet),
    ...table(context, sheet),
    ...cockpitCard(context),
    ...sources(
      ...(sheet.envelope
        ? [
            say.words`Foremost and rearmost are the exact extremes of everything that the stated limits allow, solved and not tried out (adverse-loading check, AC 43.13-1B ch. 10).`,
          ]
        : []),
      say.words`Valid for the empty mass and equipment of this pack alone. The pilot must work out the loading of every flight.`,
    ),
  };
}

const VERDICTS = {
  inside: phrase`inside`,
  outside: phrase`OUTSIDE`,
  'no-pilot': phrase`NO PILOT`,
  'no-solo': phrase`NOT ALONE`,
  'too-light': phrase`PILOT TOO LIGHT`,
  'too-heavy': phrase`TOO HEAVY`,
  'limit-exceeded': phrase`OVER A LIMIT`,
} as const;

function loadingRow(context: PackContext, { kind, path, verdict }: NamedLoading, index: number): View {
  const { say, visit, results } = context;
  const { envelope, leastPilot } = results.loading ?? {};
  const hasEnvelope = envelope !== undefined;
  const start = path[0];
  const end = path.at(-1);
  const hasTanks = tanksOf(visit.aircraft).length > 0;
  const isInside = verdict.state === 'inside';
  return {
    number: String(index + 1),
    name: loadingName(kind, say),
    aboard: start ? describeLoading(visit, start, say, leastPilot?.kg) : DASH,
    mass: start ? loadedMass(context, start) : DASH,
    burnt: hasTanks && {
      mass: end ? loadedMass(context, end) : DASH,
      arm: hasEnvelope && end ? armText(say, end, isInside ? envelope : undefined) : '',
      hasArm: hasEnvelope,
    },
    arms: hasEnvelope && {
      start: start ? armText(say, start, isInside ? envelope : undefined) : DASH,
    },
    verdict: isInside && !hasEnvelope ? say.words`within mass limits` : say.term(VERDICTS[verdict.state]),
  };
}

/** A mass that the aircraft may have is not printed above what it may have. */
function loadedMass({ say, visit }: PackContext, { massKg }: Loading): string {
  return say.number('mass', massKg, { bound: say.inward('mass', massKg, { most: visit.aircraft.maximumMassKg }) });
}

/** A centre of gravity; within an envelope it is printed within its limits at that mass. */
function armText(say: PackContext['say'], loading: Loading, envelope: Envelope | undefined): string {
  const armMm = cgMm(loading);
  const at = (pieces: readonly LimitPiece[] = []): number[] =>
    pieces
      .filter(({ fromKg, toKg }) => fromKg <= loading.massKg && loading.massKg <= toKg)
      .map((piece) => armOn(piece, loading.massKg));
  const limits = { least: Math.max(...at(envelope?.forward)), most: Math.min(...at(envelope?.aft)) };
  return say.number('arm', armMm, { bound: say.inward('arm', armMm, limits) });
}

/** Which way the limit of each side bounds. */
const BOUNDS = { forward: 'least', aft: 'most', below: 'least', above: 'most' } as const;

function marginLines(context: PackContext, sheet: LoadingSheet): string[] {
  const { say, visit, results } = context;
  const spread = results.schedule?.expanded?.armMm;
  const lines = (sheet.extremes?.margins ?? []).map(({ side, margin, loading, limit }) => {
    const quantity = side === 'below' || side === 'above' ? 'mass' : 'arm';
    const mass = `${loadedMass(context, loading)}\u00a0${say.unit('mass')}`;
    const place = `${mass}, ${describeLoading(visit, loading, say, sheet.leastPilot?.kg)}`;
    const within = say.measure(quantity, margin, { signed: true, extra: 1, bound: 'most' });
    return say.words`Nearest to the ${say.term(side)} limit of ${say.measure(quantity, limit, { bound: BOUNDS[side] })}: ${within}, at ${place}`;
  });
  return spread === undefined
    ? lines
    : [
        ...lines,
        say.words`Uncertainty of the empty centre of gravity: ± ${say.measure('arm', spread, { extra: 1 })} (k = 2)`,
      ];
}

/** The least solo pilot of the cockpit card, with what it follows from. */
function soloLine({ say, visit, regime }: PackContext, { leastPilot: least, envelope }: LoadingSheet): string {
  if (!least) return say.words`The aircraft has no seat for a pilot`;
  const seat = visit.aircraft.stations.find(({ id }) => id === least.station)?.name ?? '';
  if (least.kg === undefined) return say.words`${seat}: no pilot within the seat’s limit may fly alone`;
  const from = inBrackets(bothSystems(say, 'mass', least.kg, { bound: 'least' }));
  if (least.governedBy === 'envelope' && tanksOf(visit.aircraft).length === 0)
    return say.words`${seat}: a pilot from ${from} may fly alone without baggage, by the envelope`;
  if (least.governedBy === 'envelope')
    return say.words`${seat}: a pilot from ${from} may fly alone without baggage, at every fuel content, by the envelope`;
  const why =
    least.governedBy === 'placard'
      ? say.words`as the aircraft states`
      : say.words`a custom, because the aircraft states none (${regime.title})`;
  if (envelope) return say.words`${seat}: a pilot from ${from} may fly alone, ${why}; the envelope asks for no more`;
  const noLimits = say.words`No limits on the centre of gravity are specified for this aircraft: masses and the limits of stations are what counts`;
  return `${noLimits}. ${say.words`${seat}: a pilot from ${from} may fly alone, ${why}`}`;
}

function table({ say, visit }: PackContext, sheet: LoadingSheet): View {
  const hasTanks = tanksOf(visit.aircraft).length > 0;
  const places = visit.aircraft.stations.filter(({ kind }) => kind === 'baggage');
  const { maximumMassKg, maximumLandingMassKg = maximumMassKg } = visit.aircraft;
  return {
    hasBaggage: places.length > 0,
    order:
      places.length > MOST_LISTED
        ? say.words`Baggage places are filled in the order of the stations on the cockpit card; every lesser amount is allowed too.`
        : places.length > 1
          ? say.words`Baggage places are filled in this order: ${places.map(({ name }) => name).join(', ')}; every lesser amount is allowed too.`
          : '',
    landing:
      maximumLandingMassKg < maximumMassKg
        ? say.words`These loads may take off. Above ${say.measure('mass', maximumLandingMassKg, { bound: 'most' })}, the maximum landing mass, the excess must be burnt before landing, and the reserve of fuel be left.`
        : '',
    fuelHeads: hasTanks
      ? sheet.table.usableL.map((usable) => say.number('volume', usable, { bound: 'most' }))
      : [places.length > 0 ? say.words`Baggage` : say.words`Allowed`],
    rows: sheet.table.rows.map(({ aboard, eachKg, cells }) => ({
      crew: crewText(say, aboard, say.number('mass', eachKg)),
      // Without a tank every share of fuel is the same: one column says it.
      cells: (hasTanks ? cells : cells.slice(0, 1)).map((cell) => cellText(say, cell, places.length > 0)),
    })),
    hasRows: sheet.table.rows.length > 0,
    crews: crewSeats(visit, sheet, say),
  };
}

/** As many places as are listed by name in a sentence. */
const MOST_LISTED = 4;

function crewText(say: PackContext['say'], aboard: CrewAboard, each: string): string {
  if (aboard === 'solo') return say.words`Pilot alone, ${each}`;
  return aboard === 'two' ? say.words`Two, each ${each}` : say.words`All seats, each ${each}`;
}

/** Who sits where, once there are more seats than the crews of the table fill. */
function crewSeats({ aircraft }: PackContext['visit'], { table }: LoadingSheet, say: PackContext['say']): string {
  const nameOf = (id: string): string => aircraft.stations.find((station) => station.id === id)?.name ?? id;
  const of = (crew: CrewAboard): string[] =>
    table.seats.find(({ aboard }) => aboard === crew)?.stations.map(nameOf) ?? [];
  const [[pilot], [first, second]] = [of('solo'), of('two')];
  const seats = aircraft.stations.filter(({ kind }) => kind === 'pilot' || kind === 'passenger');
  if (pilot === undefined || Math.max(seats.length, aircraft.seats) <= 2) return '';
  const alone = say.words`Pilot alone: ${pilot}, with every other seat empty.`;
  return first === undefined || second === undefined
    ? alone
    : `${alone} ${say.words`Two: ${first} and ${second}, with every other seat empty.`}`;
}

const OUTSIDE = {
  forward: phrase`forward out`,
  aft: phrase`aft out`,
  below: phrase`below out`,
  above: phrase`above out`,
} as const;

const REFUSALS = {
  'no-pilot': phrase`pilot`,
  'no-solo': phrase`pilot`,
  'too-light': phrase`pilot`,
  'too-heavy': phrase`heavy`,
  'limit-exceeded': phrase`limit`,
} as const;

/** Baggage is rounded down, so that the printed figure is always allowed; without a place for any, a crew and fuel are or are not. */
function cellText(say: PackContext['say'], cell: CrewFuelCell, hasBaggage: boolean): string {
  if ('refused' in cell) {
    const { refused } = cell;
    return say.term(refused.state === 'outside' ? OUTSIDE[refused.worst.side] : REFUSALS[refused.state]);
  }
  return hasBaggage ? say.number('mass', cell.baggageKg, { bound: 'most' }) : say.words`yes`;
}
