import type { Harness } from '../../calc/wiring/harness-mass.ts';
import type { Visit } from '../../record/visit.ts';
import { DASH } from '../../text/dash.ts';
import * as m from '../../text/generated/messages.ts';
import type { PackContext } from '../context.ts';
import { nameOf, signatureOf } from '../people.ts';
import type { View } from '../render.ts';
import { accepted } from './accepted.ts';
import { common, sources } from './common.ts';
import { printGauge } from './print-gauge.ts';
import { wireEnd } from './wire-end.ts';

/** Document whose terms for directions and screens differ from others. */
const PLACE = 'wiring-schedule';

type Wiring = NonNullable<Visit['wiring']>;
type Wire = Wiring['wires'][number];

export function wiringScheduleView(context: PackContext): View {
  const { visit, results, fmt } = context;
  const record = visit.wiring;
  const found = results.wiring;
  if (!record || !found) throw new Error('Cannot fill the wiring schedule: the visit has no wiring');
  return {
    ...common(context),
    ...accepted(context, '/wiring'),
    drawing: record.drawing ?? DASH,
    tested: record.test
      ? fmt.text(m.wiringSchedule_by, {
          at: fmt.timestamp(record.test.at),
          visit: nameOf(visit, record.test.by),
          instrument: record.test.instrument,
        })
      : fmt.text(m.wiringSchedule_notTested),
    added: harnessText(context, found.harness.added),
    removed: harnessText(context, found.harness.removed),
    connectors: record.connectors.map((connector) => connectorView(context, record, connector)),
    wires: record.wires.map((wire) => wireRow(context, wire)),
    hasFound: (record.found ?? []).length > 0,
    found: (record.found ?? []).map(({ id, mark, from, to, identifiedBy, decision, isLive }) => ({
      id,
      mark: mark ?? DASH,
      from,
      to,
      identifiedBy: fmt.term(identifiedBy),
      decision: fmt.term(decision),
      live: isLive === undefined ? DASH : isLive ? fmt.text(m.wiringSchedule_yes) : fmt.text(m.no),
    })),
    hasNearControls: (record.nearControls ?? []).length > 0,
    nearControls: (record.nearControls ?? []).map((near) => ({
      what: near.what,
      control: near.control,
      distance: fmt.measure('arm', near.distanceMm),
      secured: near.isSecured ? fmt.text(m.yes) : fmt.text(m.wiringSchedule_no),
      guarded: near.isGuarded ? fmt.text(m.yes) : fmt.text(m.no),
    })),
    signatures: [
      signatureOf({ visit, fmt }, record.test?.by, fmt.text(m.tested), record.test ? fmt.day(record.test.at) : DASH),
    ],
    ...sources(
      fmt.text(m.wiringSchedule_directionSeenEquipmentMasses),
      fmt.text(m.wiringSchedule_distanceControls3Guard),
      fmt.text(m.wiringSchedule_electricalWorkDisconnectBattery),
    ),
  };
}

function harnessText({ fmt }: PackContext, { lengthM, massKg, armMm }: Harness): string {
  const length = `${fmt.plain(lengthM, 1)} m`;
  const mass = fmt.measure('mass', massKg, { extra: 2 });
  return armMm === undefined
    ? fmt.text(m.wiringSchedule_about, { length, mass })
    : fmt.text(m.wiringSchedule_about2, { length, mass, arm: fmt.measure('arm', armMm) });
}

function connectorView(
  { fmt }: PackContext,
  { wires }: Wiring,
  { id, name, partNumber, pins }: Wiring['connectors'][number],
): View {
  const reaching = (pin: string): Wire[] =>
    wires.filter(
      ({ from, to, change }) => change !== 'removed' && [from, to].some((end) => end.at === id && end.pin === pin),
    );
  return {
    title: `${id}, ${name}${partNumber ? ` (${partNumber})` : ''}`,
    pins: pins.map(({ pin, signal, direction, level }) => {
      const own = reaching(pin);
      const other = ({ from, to }: Wire): string => wireEnd(from.at === id && from.pin === pin ? to : from);
      return {
        pin,
        signal,
        direction: fmt.term(direction, PLACE),
        level: level ? fmt.term(level) : DASH,
        wire: own.map(({ mark }) => mark ?? fmt.text(m.wiringSchedule_noMark)).join(', ') || DASH,
        leadsTo: own.map(other).join(', ') || DASH,
      };
    }),
  };
}

function wireRow({ fmt }: PackContext, wire: Wire): Record<string, string> {
  return {
    mark: wire.mark ?? fmt.text(m.wiringSchedule_noMark2),
    change: fmt.term(wire.change),
    from: wireEnd(wire.from),
    to: wireEnd(wire.to),
    gauge: printGauge(wire),
    length: fmt.plain(wire.lengthM, 2),
    shield: fmt.term(wire.shield, PLACE),
    circuit: wire.circuit ?? DASH,
    continuity: wire.continuity ? fmt.term(wire.continuity) : DASH,
    insulation: wire.insulationMohm === undefined ? DASH : fmt.plain(wire.insulationMohm, 0),
  };
}
