import { envelopeCorners } from '../../../worker/core/calc/loading/aircraft-envelope.ts';
import type { Assessed } from '../../../worker/core/core.ts';
import { dueLimit } from '../../../worker/core/pack/views/due-limit.ts';
import { wireEnd } from '../../../worker/core/pack/views/wire-end.ts';
import { MAX } from '../../../worker/core/text/figure.ts';
import { type Formatter, formatterFor } from '../../../worker/core/text/formatter.ts';
import type { ComparisonGroup } from './protocol.ts';

type Compared = Pick<Assessed, 'visit' | 'results'>;
/** Lines of one respect, by a key that stays the same between visits. */
type Lines = ReadonlyMap<string, string>;
type Respect = readonly [name: string, lines: (visit: Compared, fmt: Formatter) => Lines, how?: Shown];

interface Shown {
  /** Whether unchanged lines are shown. */
  showsAll?: boolean;
  /** Text for a line that one of the two lacks. */
  absent?: string;
}

const NONE = '–';
/**
 * An item left open by an earlier pack stays open until it is answered, and a wire stays in place: a record that omits
 * it changes nothing.
 */
const UNSAID = { absent: 'not in the record' } as const;

/** Respects in which two visits are compared, in the order of the pack. */
const RESPECTS: readonly Respect[] = [
  ['Mass and arm', massAndArm, { showsAll: true }],
  ['Limits', limits, UNSAID],
  ['Equipment', equipment],
  ['Wiring', wiring, UNSAID],
  ['Due', due, UNSAID],
];

/** Returns the differences between two visits of one aircraft, printed in the units of the later one. */
export function comparisonOf(before: Compared, now: Compared): ComparisonGroup[] {
  const fmt = formatterFor(now.visit.units);
  return RESPECTS.map(([name, linesOf, { showsAll = false, absent = NONE } = {}]) => {
    const [earlier, later] = [linesOf(before, fmt), linesOf(now, fmt)];
    // What a record that builds on the standing file leaves out is unchanged.
    const kept = absent === UNSAID.absent && now.visit.standing !== undefined ? [] : earlier.keys();
    const names = [...new Set([...kept, ...later.keys()])];
    const rows = names.map((line) => ({
      name: line,
      before: earlier.get(line) ?? absent,
      now: later.get(line) ?? absent,
    }));
    return { name, rows: showsAll ? rows : rows.filter((row) => row.before !== row.now) };
  });
}

const massOrNone = (fmt: Formatter, massKg: number | undefined): string =>
  massKg === undefined ? NONE : fmt.measure('mass', massKg, MAX);

function massAndArm({ results: { schedule, loading } }: Compared, fmt: Formatter): Lines {
  if (!schedule) return new Map();
  return new Map([
    ['Empty mass', `${fmt.measure('mass', schedule.massKg)}, ${schedule.basis}`],
    ['Empty arm', fmt.measure('arm', schedule.armMm, { extra: 1 })],
    ['Empty moment', fmt.measure('moment', schedule.momentKgMm)],
    ['Crew, baggage and fuel together', fmt.measure('mass', schedule.usefulLoadKg, MAX)],
    ...(loading ? [['With full tanks', fmt.measure('mass', loading.limits.fullTanksPayload.kg, MAX)] as const] : []),
  ]);
}

function limits({ visit: { aircraft, release } }: Compared, fmt: Formatter): Lines {
  const corner = ({ armMm, massKg }: { armMm: number; massKg: number }): string =>
    `${fmt.number('arm', armMm)} at ${fmt.number('mass', massKg)}`;
  const stations = aircraft.stations.map((station) => {
    const most =
      'capacityL' in station
        ? fmt.measure('volume', station.capacityL, MAX)
        : fmt.measure('mass', station.maximumMassKg, MAX);
    return [`Station ${station.name}`, `max. ${most}`] as const;
  });
  return new Map([
    ['Maximum mass', fmt.measure('mass', aircraft.maximumMassKg, MAX)],
    ['Maximum zero-fuel mass', massOrNone(fmt, aircraft.maximumZeroFuelMassKg)],
    ['Maximum landing mass', massOrNone(fmt, aircraft.maximumLandingMassKg)],
    ['Envelope', (envelopeCorners(aircraft) ?? []).map(corner).join('; ') || NONE],
    ...stations,
    ...(release?.limitations ?? []).map((text) => [`Limitation: ${text}`, 'in force'] as const),
    ...(release?.flightTestsAfterRelease ?? []).map(
      ({ modification, limitation }) => [`Flight test of ${modification}`, limitation] as const,
    ),
  ]);
}

function equipment({ results: { change } }: Compared, fmt: Formatter): Lines {
  return new Map(
    change.after.map(({ id, name, serial, massKg, armMm }) => {
      const where = `${fmt.measure('mass', massKg, { extra: 1 })} at ${fmt.measure('arm', armMm)}`;
      return [`${id} ${name}`, `${serial === undefined ? '' : `serial ${serial}, `}${where}`];
    }),
  );
}

function wiring({ visit }: Compared): Lines {
  const wires = (visit.wiring?.wires ?? []).filter(({ change }) => change !== 'removed');
  return new Map(
    wires.map(({ mark, from, to, gauge }) => {
      const ends = `${wireEnd(from)} to ${wireEnd(to)}`;
      return [mark ?? ends, `${ends}, size ${gauge}`];
    }),
  );
}

function due({ visit, results }: Compared, fmt: Formatter): Lines {
  return new Map(
    results.due.map((line) => {
      const { id, item, dueDate: date, dueHours: hours, dueLandings: landings, dueCounts } = line;
      return [`${id} ${item}`, dueLimit(visit, { ...line, ...dueCounts, date, hours, landings }, fmt) ?? NONE];
    }),
  );
}
