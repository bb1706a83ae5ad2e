import type { Harness } from '../../calc/wiring/harness-mass.ts';
import { DASH } from '../../text/dash.ts';
import * as m from '../../text/generated/messages.ts';
import type { Visit } from '../../visit/visit.ts';
import type { PackContext } from '../context.ts';
import { nameOf, signatureOf } from '../people.ts';
import type { View } from '../render.ts';
import { common, sources } from './common.ts';
import { printGauge } from './print-gauge.ts';
import { wireEnd } from './wire-end.ts';

/** Its words for directions and screens mean something else elsewhere. */
const PLACE = 'wiring-schedule';

type Wiring = NonNullable<Visit['wiring']>;
type Wire = Wiring['wires'][number];

export function wiringScheduleView(context: PackContext): View {
  const { visit, results, say } = context;
  const record = visit.wiring;
  const found = results.wiring;
  if (!record || !found) throw new Error('Cannot fill the wiring schedule: the visit has no wiring');
  return {
    ...common(context),
    drawing: record.drawing ?? DASH,
    tested: record.test
      ? say.text(m.wiringSchedule_by, {
          at: say.moment(record.test.at),
          visit: nameOf(visit, record.test.by),
          instrument: record.test.instrument,
        })
      : say.text(m.wiringSchedule_notTested),
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
      identifiedBy: say.term(identifiedBy),
      decision: say.term(decision),
      live: isLive === undefined ? DASH : isLive ? say.text(m.wiringSchedule_yes) : say.text(m.no),
    })),
    hasNearControls: (record.nearControls ?? []).length > 0,
    nearControls: (record.nearControls ?? []).map((near) => ({
      what: near.what,
      control: near.control,
      distance: say.measure('arm', near.distanceMm),
      secured: near.isSecured ? say.text(m.yes) : say.text(m.wiringSchedule_no),
      guarded: near.isGuarded ? say.text(m.yes) : say.text(m.no),
    })),
    signatures: [signatureOf(visit, record.test?.by, say.text(m.tested), record.test ? say.day(record.test.at) : DASH)],
    ...sources(
      say.text(m.wiringSchedule_directionSeenEquipmentMasses),
      say.text(m.wiringSchedule_distanceControls3Guard),
      say.text(m.wiringSchedule_electricalWorkDisconnectBattery),
    ),
  };
}

function harnessText({ say }: PackContext, { lengthM, massKg, armMm }: Harness): string {
  const length = `${say.plain(lengthM, 1)} m`;
  const mass = say.measure('mass', massKg, { extra: 2 });
  return armMm === undefined
    ? say.text(m.wiringSchedule_about, { length, mass })
    : say.text(m.wiringSchedule_about2, { length, mass, arm: say.measure('arm', armMm) });
}

function connectorView(
  { say }: PackContext,
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
        direction: say.term(direction, PLACE),
        level: level ? say.term(level) : DASH,
        wire: own.map(({ mark }) => mark ?? say.text(m.wiringSchedule_noMark)).join(', ') || DASH,
        leadsTo: own.map(other).join(', ') || DASH,
      };
    }),
  };
}

function wireRow({ say }: PackContext, wire: Wire): Record<string, string> {
  return {
    mark: wire.mark ?? say.text(m.wiringSchedule_noMark2),
    change: say.term(wire.change),
    from: wireEnd(wire.from),
    to: wireEnd(wire.to),
    gauge: printGauge(wire),
    length: say.plain(wire.lengthM, 2),
    shield: say.term(wire.shield, PLACE),
    circuit: wire.circuit ?? DASH,
    continuity: wire.continuity ? say.term(wire.continuity) : DASH,
    insulation: wire.insulationMohm === undefined ? DASH : say.plain(wire.insulationMohm, 0),
  };
}
