import type { Harness } from '../../calc/wiring/harness-mass.ts';
import { DASH } from '../../text/dash.ts';
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
      ? say.words`${say.moment(record.test.at)} by ${nameOf(visit, record.test.by)}; ${record.test.instrument}`
      : say.words`NOT TESTED`,
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
      live: isLive === undefined ? DASH : isLive ? say.words`YES` : say.words`no`,
    })),
    hasNearControls: (record.nearControls ?? []).length > 0,
    nearControls: (record.nearControls ?? []).map((near) => ({
      what: near.what,
      control: near.control,
      distance: say.measure('arm', near.distanceMm),
      secured: near.isSecured ? say.words`yes` : say.words`NO`,
      guarded: near.isGuarded ? say.words`yes` : say.words`no`,
    })),
    signatures: [
      signatureOf(visit, record.test?.by, say.words`Tested by`, record.test ? say.day(record.test.at) : DASH),
    ],
    ...sources(
      say.words`Direction as seen from the equipment. Masses of wires: conductor by the gauge formula (ASTM B258, from memory) with an allowance for insulation, or the maker’s figure; to be held against the equipment change, never added by itself.`,
      say.words`Distance from controls: 3 in, or a guard, and clamps of which no single one may fail (AC 43.13-1B paras 11-96 and 11-125, from memory).`,
      say.words`Electrical work: disconnect the battery first.`,
    ),
  };
}

function harnessText({ say }: PackContext, { lengthM, massKg, armMm }: Harness): string {
  const length = `${say.plain(lengthM, 1)} m`;
  const mass = say.measure('mass', massKg, { extra: 2 });
  return armMm === undefined
    ? say.words`${length}, about ${mass}`
    : say.words`${length}, about ${mass} at ${say.measure('arm', armMm)}`;
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
        wire: own.map(({ mark }) => mark ?? say.words`no mark`).join(', ') || DASH,
        leadsTo: own.map(other).join(', ') || DASH,
      };
    }),
  };
}

function wireRow({ say }: PackContext, wire: Wire): Record<string, string> {
  return {
    mark: wire.mark ?? say.words`NO MARK`,
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
