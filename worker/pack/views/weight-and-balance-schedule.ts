import { payloadAgainst } from '../../calc/payload.ts';
import { DASH } from '../../text/dash.ts';
import * as m from '../../text/generated/messages.ts';
import { factorOf } from '../../units/quantity.ts';
import { historyChart } from '../chart/history-chart.ts';
import type { PackContext } from '../context.ts';
import { historyReason } from '../line-name.ts';
import type { View } from '../render.ts';
import { type BothSystems, bothSystems } from './both-systems.ts';
import { unitHeads } from './change-rows.ts';
import { common, sources } from './common.ts';
import { fullTanksNote, usefulLoadNote } from './pilot-limits.ts';
import { releaserSignature } from './releaser-signature.ts';
import { stationRows } from './station-rows.ts';

export function weightAndBalanceScheduleView(context: PackContext): View {
  const { results, say } = context;
  const { schedule } = results;
  if (!schedule) throw new Error('Cannot fill the weight schedule: the visit has no empty mass');
  const isWeighed = schedule.basis === 'weighed';
  return {
    ...common(context),
    ...unitHeads(context),
    isComputed: !isWeighed,
    basis: basisLine(context),
    ...headFigures(context, schedule),
    supersedes: schedule.supersedes ?? say.text(m.none),
    equipmentCount: String(results.change.after.length),
    ...envelopeRows(context),
    stations: stationRows(context),
    ...historyCharts(context),
    history: schedule.history.map((entry, index) => ({
      step: String(index + 1),
      date: say.date(entry.date),
      reason: say.value(historyReason(entry.cause)),
      changeMass: say.number('mass', entry.changeKg, { signed: true, extra: 1 }),
      changeMoment: say.number('moment', entry.changeKgMm, { signed: true }),
      mass: say.number('mass', entry.massKg, { extra: 1 }),
      arm: say.number('arm', entry.armMm, { extra: 1 }),
      moment: say.number('moment', entry.momentKgMm),
    })),
    signatures: releaserSignature(context, say.text(m.weightAndBalanceSchedule_preparedRelease)),
    ...sources(
      say.text(m.weightAndBalanceSchedule_emptyMassHoldsUnusable),
      say.text(m.weightAndBalanceSchedule_figuresAircraftLimitsStations),
    ),
  };
}

type Schedule = NonNullable<PackContext['results']['schedule']>;

/** A limit that is not to be passed. */
const MOST = { bound: 'most' } as const;

/** What the schedule is read for, first. */
function headFigures(context: PackContext, schedule: Schedule): View {
  const { visit, results, say } = context;
  const { aircraft } = visit;
  return {
    emptyMass: bothSystems(say, 'mass', schedule.massKg),
    emptyArm: bothSystems(say, 'arm', schedule.armMm, { extra: 1 }),
    emptyMoment: say.measure('moment', schedule.momentKgMm),
    uncertainty: schedule.expanded
      ? say.text(m.weightAndBalanceSchedule_k2, {
          mass: say.measure('mass', schedule.expanded.massKg),
          arm: say.measure('arm', schedule.expanded.armMm, { extra: 1 }),
        })
      : say.text(m.weightAndBalanceSchedule_notKnownComputedNot),
    mac:
      schedule.macPercent === undefined
        ? DASH
        : say.text(m.weightAndBalanceSchedule_mac, { macPercent: say.plain(schedule.macPercent, 1) }),
    datum: aircraft.datum,
    maximumMass: bothSystems(say, 'mass', aircraft.maximumMassKg, MOST),
    landingMass: bothSystems(say, 'mass', aircraft.maximumLandingMassKg, MOST),
    zeroFuelMass: bothSystems(say, 'mass', aircraft.maximumZeroFuelMassKg, MOST),
    emptyCap: bothSystems(say, 'mass', aircraft.maximumEmptyMassKg, MOST),
    emptyRange: emptyRange(context),
    usefulLoad: bothSystems(say, 'mass', schedule.usefulLoadKg, MOST),
    usefulLoadNote: usefulLoadNote(context),
    fullFuelPayload: bothSystems(say, 'mass', results.loading?.limits.fullTanksPayload.kg, MOST),
    fullFuelNote: fullTanksNote(context),
    payloadRule: payloadLine(context, schedule.massKg),
  };
}

function emptyRange({ visit, say }: PackContext): BothSystems {
  const range = visit.aircraft.emptyRange;
  if (!range) return { value: DASH, other: '' };
  const { forwardMm, aftMm } = range;
  return {
    value: say.text(m.to, {
      text: say.number('arm', forwardMm, { bound: 'least' }),
      text2: say.measure('arm', aftMm, { bound: 'most' }),
    }),
    other: say.text(m.to, { text: say.other('arm', forwardMm, 'least'), text2: say.other('arm', aftMm, 'most') }),
  };
}

/** Mass and arm side by side, once there are steps enough to see a history in. */
function historyCharts({ results, say }: PackContext): View {
  const history = results.schedule?.history ?? [];
  if (history.length < 4) return { hasCharts: false };
  const [mass, arm] = [factorOf('mass', say.units), factorOf('arm', say.units)];
  return {
    hasCharts: true,
    massChart: historyChart(
      say.text(m.weightAndBalanceSchedule_emptyMass),
      say.unit('mass'),
      history.map(({ massKg }) => massKg / mass),
      say,
    ),
    armChart: historyChart(
      say.text(m.weightAndBalanceSchedule_arm),
      say.unit('arm'),
      history.map(({ armMm }) => armMm / arm),
      say,
    ),
  };
}

function basisLine({ results, say }: PackContext): string {
  const { schedule } = results;
  if (schedule?.basis === 'weighed')
    return say.text(m.weightAndBalanceSchedule_weighedSeeWeighingReport, {
      weighedOn: schedule.weighedOn ? say.date(schedule.weighedOn) : '',
    });
  const since = schedule?.weighedOn
    ? say.text(m.weightAndBalanceSchedule_lastWeighed, { weighedOn: say.date(schedule.weighedOn) })
    : '';
  return say.text(m.weightAndBalanceSchedule_computedNotWeighedLines, {
    since,
    changesSinceWeighing: schedule?.changesSinceWeighing ?? 0,
  });
}

function payloadLine({ visit, regime, say }: PackContext, emptyKg: number): string {
  const rule = regime.minimumPayload.value;
  if (!rule) return say.text(m.weightAndBalanceSchedule_regimeSetsNone);
  const { sparePayloadKg } = payloadAgainst(visit, emptyKg, rule);
  return say.text(m.weightAndBalanceSchedule_againstHFuel, {
    sparePayload: say.measure('mass', sparePayloadKg, { signed: true, ...MOST }),
    seats: visit.aircraft.seats,
    perSeat: say.measure('mass', rule.perSeatKg),
    fuelHours: say.plain(rule.fuelHours, 1),
  });
}

function envelopeRows({ visit, say }: PackContext): View {
  const corners = visit.aircraft.envelope ?? [];
  return {
    hasEnvelope: corners.length > 0,
    envelope: corners.map(({ armMm, massKg }, index) => ({
      corner: String(index + 1),
      mass: say.stated('mass', massKg),
      arm: say.stated('arm', armMm),
    })),
  };
}
