import { dueLimit } from '../../../worker/pack/views/due-limit.ts';
import { wireEnd } from '../../../worker/pack/views/wire-end.ts';
import type { Assessed } from '../../../worker/pipeline.ts';
import { type Printer, printerFor } from '../../../worker/text/print.ts';
import type { ComparisonGroup } from './protocol.ts';

type Compared = Pick<Assessed, 'visit' | 'results'>;
/** Lines of one respect, by what stays the same between visits. */
type Lines = ReadonlyMap<string, string>;
type Respect = readonly [name: string, lines: (visit: Compared, say: Printer) => Lines, how?: Shown];

interface Shown {
  /** Also the lines that are the same. */
  showsAll?: boolean;
  /** What is said of a line that one of the two lacks. */
  absent?: string;
}

const NONE = '–';
/** What an earlier pack left open stands until it is answered for, and a wire is where it is: a record that says nothing of it ends nothing. */
const UNSAID = { absent: 'not in the record' } as const;

/** In which respects two visits are held against each other, in the order of the pack. */
const RESPECTS: readonly Respect[] = [
  ['Mass and arm', massAndArm, { showsAll: true }],
  ['Limits', limits, UNSAID],
  ['Equipment', equipment],
  ['Wiring', wiring, UNSAID],
  ['Due', due, UNSAID],
];

/** What differs between two visits of one aircraft, printed in the units of the later one. */
export function comparisonOf(before: Compared, now: Compared): ComparisonGroup[] {
  const say = printerFor(now.visit.units);
  return RESPECTS.map(([name, linesOf, { showsAll = false, absent = NONE } = {}]) => {
    const [earlier, later] = [linesOf(before, say), linesOf(now, say)];
    const names = [...new Set([...earlier.keys(), ...later.keys()])];
    const rows = names.map((line) => ({
      name: line,
      before: earlier.get(line) ?? absent,
      now: later.get(line) ?? absent,
    }));
    return { name, rows: showsAll ? rows : rows.filter((row) => row.before !== row.now) };
  });
}

/** A limit that is not to be passed. */
const MOST = { bound: 'most' } as const;

const massOrNone = (say: Printer, massKg: number | undefined): string =>
  massKg === undefined ? NONE : say.measure('mass', massKg, MOST);

function massAndArm({ results: { schedule, loading } }: Compared, say: Printer): Lines {
  if (!schedule) return new Map();
  return new Map([
    ['Empty mass', `${say.measure('mass', schedule.massKg)}, ${schedule.basis}`],
    ['Empty arm', say.measure('arm', schedule.armMm, { extra: 1 })],
    ['Empty moment', say.measure('moment', schedule.momentKgMm)],
    ['Crew, baggage and fuel together', say.measure('mass', schedule.usefulLoadKg, MOST)],
    ...(loading ? [['With full tanks', say.measure('mass', loading.limits.fullTanksPayload.kg, MOST)] as const] : []),
  ]);
}

function limits({ visit: { aircraft, release } }: Compared, say: Printer): Lines {
  const corner = ({ armMm, massKg }: { armMm: number; massKg: number }): string =>
    `${say.number('arm', armMm)} at ${say.number('mass', massKg)}`;
  const stations = aircraft.stations.map((station) => {
    const most =
      'capacityL' in station
        ? say.measure('volume', station.capacityL, MOST)
        : say.measure('mass', station.maximumMassKg, MOST);
    return [`Station ${station.name}`, `at most ${most}`] as const;
  });
  return new Map([
    ['Maximum mass', say.measure('mass', aircraft.maximumMassKg, MOST)],
    ['Maximum zero-fuel mass', massOrNone(say, aircraft.maximumZeroFuelMassKg)],
    ['Maximum landing mass', massOrNone(say, aircraft.maximumLandingMassKg)],
    ['Envelope', (aircraft.envelope ?? []).map(corner).join('; ') || NONE],
    ...stations,
    ...(release?.limitations ?? []).map((text) => [`Limitation: ${text}`, 'stands'] as const),
  ]);
}

function equipment({ results: { change } }: Compared, say: Printer): Lines {
  return new Map(
    change.after.map(({ id, name, serial, massKg, armMm }) => {
      const where = `${say.measure('mass', massKg, { extra: 1 })} at ${say.measure('arm', armMm)}`;
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

function due({ visit, results }: Compared, say: Printer): Lines {
  return new Map(
    results.due.map(({ id, item, dueDate: date, dueHours: hours, meter, dueLandings }) => {
      const landings = dueLandings === undefined ? '' : `${dueLandings} landings`;
      return [
        `${id} ${item}`,
        [dueLimit(visit, { date, hours, meter }, say), landings].filter(Boolean).join(' or ') || NONE,
      ];
    }),
  );
}
