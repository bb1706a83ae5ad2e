import { envelopeCorners } from '../../calc/loading/aircraft-envelope.ts';
import { tanksOf } from '../../calc/loading/fuel.ts';
import { payloadAgainst } from '../../calc/loading/payload.ts';
import { hasOil } from '../../calc/weighing/oil.ts';
import { DASH } from '../../text/dash.ts';
import { MAX, MIN } from '../../text/figure.ts';
import * as m from '../../text/generated/messages.ts';
import type { Message } from '../../text/message.ts';
import { factorOf } from '../../units/quantity.ts';
import { historyChart } from '../chart/history-chart.ts';
import type { PackContext } from '../context.ts';
import { historyReason } from '../line-name.ts';
import type { View } from '../render.ts';
import { accepted } from './accepted.ts';
import { type BothSystems, bothSystems, inBrackets } from './both-systems.ts';
import { unitHeads } from './change-rows.ts';
import { common, sources } from './common.ts';
import { configurationSection } from './configuration-section.ts';
import { fullTanksNote, usefulLoadNote } from './pilot-limits.ts';
import { releaserSignature } from './releaser-signature.ts';
import { stationRows } from './station-rows.ts';

export function weightAndBalanceScheduleView(context: PackContext): View {
  const { results, fmt } = context;
  const { schedule } = results;
  if (!schedule) throw new Error('Cannot fill the weight schedule: the visit has no empty mass');
  const isWeighed = schedule.basis === 'weighed';
  return {
    ...common(context),
    ...accepted(context, '/weighing', '/baseline', '/aircraft'),
    ...unitHeads(context),
    isComputed: !isWeighed,
    basis: basisLine(context),
    ...headFigures(context, schedule),
    supersedes: schedule.supersedes ?? fmt.text(m.none),
    staysValid: staysValid(context),
    classOf: fmt.term(context.visit.aircraft.class),
    undercarriage: context.visit.aircraft.undercarriage ? fmt.term(context.visit.aircraft.undercarriage) : DASH,
    configuration: context.visit.aircraft.configuration?.name ?? '',
    sections: configurationSection(context),
    ...lateralSchedule(context),
    equipment: fmt.text(m.weightAndBalanceSchedule_itemsSeeEquipmentList, {
      equipmentCount: results.change.after.length,
    }),
    hasTanks: tanksOf(context.visit.aircraft).length > 0,
    ...flightMasses(context),
    ...envelopeRows(context),
    stations: stationRows(context),
    ...historyCharts(context),
    history: schedule.history.map((entry, index) => ({
      step: String(index + 1),
      date: fmt.date(entry.date),
      reason: fmt.value(historyReason(entry.cause)),
      changeMass: fmt.number('mass', entry.changeKg, { signed: true, extra: 1 }),
      changeMoment: fmt.number('moment', entry.changeKgMm, { signed: true }),
      mass: fmt.number('mass', entry.massKg, { extra: 1 }),
      arm: fmt.number('arm', entry.armMm, { extra: 1 }),
      moment: fmt.number('moment', entry.momentKgMm),
    })),
    signatures: releaserSignature(context, fmt.text(m.weightAndBalanceSchedule_preparedRelease)),
    ...sources(fmt.text(holds(context)), fmt.text(m.weightAndBalanceSchedule_figuresAircraftLimitsStations)),
  };
}

/** Returns the limit of the non-lifting parts with their mass now, the maximum mass with an external load and the minimum flying mass; empty if not stated. */
function flightMasses({ visit, results, fmt }: PackContext): View {
  const { nonLifting, minimumMassKg, maximumMassWithExternalLoadKg: externalKg } = visit.aircraft;
  const emptyKg = results.schedule?.massKg ?? 0;
  return {
    nonLifting: nonLifting
      ? fmt.text(m.weightAndBalanceSchedule_nonLifting, {
          limit: fmt.measure('mass', nonLifting.maximumMassKg, MAX),
          now: fmt.measure('mass', emptyKg - nonLifting.liftingPartsMassKg),
        })
      : '',
    externalMass: externalKg === undefined ? '' : inBrackets(bothSystems(fmt, 'mass', externalKg, MAX)),
    minimumMass: minimumMassKg === undefined ? '' : inBrackets(bothSystems(fmt, 'mass', minimumMassKg, MIN)),
  };
}

/** What the empty mass holds: an aircraft without tanks or without oil says so. */
function holds({ visit }: PackContext): Message {
  if (hasOil(visit.aircraft)) return m.weightAndBalanceSchedule_emptyMassHoldsUnusable;
  return tanksOf(visit.aircraft).length > 0
    ? m.weightAndBalanceSchedule_emptyMassHoldsFuel
    : m.weightAndBalanceSchedule_emptyMassHoldsEquipment;
}

/** Names the schedule of another configuration from which this one followed, and which stays valid. */
function staysValid({ visit, fmt }: PackContext): string {
  const { baseline, aircraft } = visit;
  const isOfAnother = baseline?.configuration !== undefined && baseline.configuration !== aircraft.configuration?.id;
  return isOfAnother ? fmt.text(m.weightAndBalanceSchedule_otherStaysValid, { reference: baseline.reference }) : '';
}

/** Returns the lateral empty centre of gravity. */
function lateralSchedule({ results, fmt }: PackContext): View {
  const { lateral } = results;
  if (!lateral) return { hasLateral: false };
  const arm = fmt.measure('arm', lateral.empty.armMm, { signed: true, extra: 1 });
  return {
    hasLateral: true,
    lateralArm: lateral.expanded ? `${arm} ± ${fmt.measure('arm', lateral.expanded.armMm, { extra: 1 })}` : arm,
    lateralMoment: fmt.measure('moment', lateral.empty.momentKgMm, { signed: true }),
    lateralBasis: fmt.term(lateral.basis),
  };
}

type Schedule = NonNullable<PackContext['results']['schedule']>;

/** Returns the main figures of the schedule. */
function headFigures(context: PackContext, schedule: Schedule): View {
  const { visit, results, fmt } = context;
  const { aircraft } = visit;
  return {
    emptyMass: bothSystems(fmt, 'mass', schedule.massKg),
    emptyArm: bothSystems(fmt, 'arm', schedule.armMm, { extra: 1 }),
    emptyMoment: fmt.measure('moment', schedule.momentKgMm),
    uncertainty: schedule.expanded
      ? fmt.text(m.weightAndBalanceSchedule_k2, {
          mass: fmt.measure('mass', schedule.expanded.massKg),
          arm: fmt.measure('arm', schedule.expanded.armMm, { extra: 1 }),
        })
      : fmt.text(m.weightAndBalanceSchedule_notKnownComputedNot),
    mac:
      schedule.macPercent === undefined
        ? DASH
        : fmt.text(m.weightAndBalanceSchedule_mac, { macPercent: fmt.plain(schedule.macPercent, 1) }),
    datum: aircraft.datum,
    maximumMass: bothSystems(fmt, 'mass', aircraft.maximumMassKg, MAX),
    landingMass: bothSystems(fmt, 'mass', aircraft.maximumLandingMassKg, MAX),
    // Without a tank no fuel could be zero.
    hasZeroFuelMass: tanksOf(aircraft).length > 0 || aircraft.maximumZeroFuelMassKg !== undefined,
    zeroFuelMass: bothSystems(fmt, 'mass', aircraft.maximumZeroFuelMassKg, MAX),
    emptyCap: bothSystems(fmt, 'mass', aircraft.maximumEmptyMassKg, MAX),
    emptyRange: emptyRange(context),
    usefulLoad: bothSystems(fmt, 'mass', schedule.usefulLoadKg, MAX),
    usefulLoadNote: usefulLoadNote(context),
    fullFuelPayload: bothSystems(fmt, 'mass', results.loading?.limits.fullTanksPayload.kg, MAX),
    fullFuelNote: fullTanksNote(context),
    payloadRule: payloadLine(context, schedule.massKg),
  };
}

function emptyRange({ visit, fmt }: PackContext): BothSystems {
  const range = visit.aircraft.emptyRange;
  if (!range) return { value: DASH, other: '' };
  const { forwardMm, aftMm } = range;
  return {
    value: fmt.text(m.to, {
      text: fmt.number('arm', forwardMm, MIN),
      text2: fmt.measure('arm', aftMm, MAX),
    }),
    other: fmt.text(m.to, { text: fmt.other('arm', forwardMm, 'least'), text2: fmt.other('arm', aftMm, 'most') }),
  };
}

/** Returns mass and arm charts side by side, if there are enough steps to show a history. */
function historyCharts({ results, fmt }: PackContext): View {
  const history = results.schedule?.history ?? [];
  if (history.length < 4) return { hasCharts: false };
  const [mass, arm] = [factorOf('mass', fmt.units), factorOf('arm', fmt.units)];
  return {
    hasCharts: true,
    massChart: historyChart(
      fmt.text(m.weightAndBalanceSchedule_emptyMass),
      fmt.unit('mass'),
      history.map(({ massKg }) => massKg / mass),
      fmt,
    ),
    armChart: historyChart(
      fmt.text(m.weightAndBalanceSchedule_arm),
      fmt.unit('arm'),
      history.map(({ armMm }) => armMm / arm),
      fmt,
    ),
  };
}

function basisLine({ results, fmt }: PackContext): string {
  const { schedule } = results;
  if (schedule?.basis === 'weighed')
    return fmt.text(m.weightAndBalanceSchedule_weighedSeeWeighingReport, {
      weighedOn: schedule.weighedOn ? fmt.date(schedule.weighedOn) : '',
    });
  const since = schedule?.weighedOn
    ? fmt.text(m.weightAndBalanceSchedule_lastWeighed, { weighedOn: fmt.date(schedule.weighedOn) })
    : '';
  return fmt.text(m.weightAndBalanceSchedule_computedNotWeighedLines, {
    since,
    changesSinceWeighing: schedule?.changesSinceWeighing ?? 0,
  });
}

function payloadLine({ visit, regime, fmt }: PackContext, emptyKg: number): string {
  const rule = regime.minimumPayload.value;
  if (!rule) return fmt.text(m.weightAndBalanceSchedule_regimeSetsNone);
  const { sparePayloadKg } = payloadAgainst(visit, emptyKg, rule);
  return fmt.text(m.weightAndBalanceSchedule_againstHFuel, {
    sparePayload: fmt.measure('mass', sparePayloadKg, { signed: true, ...MAX }),
    seats: visit.aircraft.seats,
    perSeat: fmt.measure('mass', rule.perSeatKg),
    fuelHours: fmt.plain(rule.fuelHours, 1),
  });
}

function envelopeRows({ visit, fmt }: PackContext): View {
  const corners = envelopeCorners(visit.aircraft) ?? [];
  return {
    hasEnvelope: corners.length > 0,
    envelope: corners.map(({ armMm, massKg }, index) => ({
      corner: String(index + 1),
      mass: fmt.stated('mass', massKg),
      arm: fmt.stated('arm', armMm),
    })),
  };
}
