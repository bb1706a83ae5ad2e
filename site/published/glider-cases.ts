import { launchesLeft } from '../../worker/core/calc/lives/launches-left.ts';
import { cockpitGrid } from '../../worker/core/calc/loading/cockpit-grid.ts';
import { leastPilotByAftLimit, mostPilotByForwardLimit } from '../../worker/core/calc/loading/cockpit-load.ts';
import { dumpTime } from '../../worker/core/calc/loading/dump.ts';
import { type MatchedRow, matchedTailBallastKg } from '../../worker/core/calc/loading/matched-ballast.ts';
import { mostPilotByNonLifting } from '../../worker/core/calc/loading/non-lifting.ts';
import { trimmedPilotKg } from '../../worker/core/calc/loading/trim-factors.ts';

interface CockpitLoadInput {
  empty: { mass: number; moment: number };
  seat: number;
  limit: number;
  side: 'aft' | 'forward';
}

interface StatesInput {
  /** Limits that the manual prints for each state. */
  states: { minimum?: number; maximum?: number }[];
  seatMaximum?: number;
  nonLifting?: { maximum: number; parts: number[] };
}

/** Topics of gliders, in kilograms and any one unit of length. */
export const GLIDER_TOPICS = {
  'cockpit-load': ({ empty, seat, limit, side }: CockpitLoadInput) => {
    const pilotOn = side === 'aft' ? leastPilotByAftLimit : mostPilotByForwardLimit;
    const given = { emptyKg: empty.mass, emptyMomentKgMm: empty.moment, seatArmMm: seat, limitArmMm: limit };
    return { pilot: pilotOn(given)?.massKg ?? Number.NaN };
  },

  'non-lifting-mass': ({ maximum, parts }: { maximum: number; parts: number[] }) => ({
    pilot: mostPilotByNonLifting(
      maximum,
      parts.map((massKg) => ({ massKg })),
    ).massKg,
  }),

  /** Limits of each state by its number; `isFlyable` and `isBySeat` are 1 for yes, 0 for no. */
  'cockpit-states': ({ states, seatMaximum, nonLifting }: StatesInput) => {
    const cockpit = {
      emptyKg: 0,
      emptyMomentKgMm: 0,
      seatArmMm: 0,
      ...(seatMaximum !== undefined && { maximumKg: seatMaximum }),
      ...(nonLifting && {
        nonLifting: { maximumKg: nonLifting.maximum, parts: nonLifting.parts.map((massKg) => ({ massKg })) },
      }),
    };
    const named = states.map(({ minimum, maximum }, index) => ({
      id: String(index + 1),
      extras: [],
      ...(minimum !== undefined && { minimumKg: minimum }),
      ...(maximum !== undefined && { maximumKg: maximum }),
    }));
    const rows = cockpitGrid(cockpit, named) ?? [];
    return Object.fromEntries(
      rows.flatMap(({ id, minimum, maximum, marginKg, isFlyable }) => [
        [`minimum${id}`, minimum?.massKg ?? 0],
        [`maximum${id}`, maximum?.massKg ?? Number.NaN],
        [`margin${id}`, marginKg ?? Number.NaN],
        [`isFlyable${id}`, Number(isFlyable)],
        [`isBySeat${id}`, Number(maximum?.governedBy === 'stated-maximum')],
      ]),
    );
  },

  /** The pilot that a manual asks of its factors, and the change that they make. */
  'trimmed-pilot': ({ basic, masses }: { basic: number; masses: { mass: number; factor: number }[] }) => {
    const pilot = trimmedPilotKg(
      basic,
      masses.map(({ mass, factor }) => ({ massKg: mass, factor })),
    );
    return { pilot, change: pilot - basic };
  },

  /** Tail ballast at every filling of the wings, by a table of fewer lines. */
  'matched-ballast': ({ table, fillings }: { table: [wing: number, tail: number][]; fillings: number[] }) => {
    const rows = table.map(([wingWaterKg, tailBallastKg]): MatchedRow => ({ wingWaterKg, tailBallastKg }));
    return Object.fromEntries(
      fillings.map((filling) => [`at${filling}`, matchedTailBallastKg(rows, filling) ?? Number.NaN]),
    );
  },

  'dump-time': ({ volume, flow }: { volume: number; flow: number }) => ({
    seconds: dumpTime({ volumeL: volume, flowLPerS: flow })?.seconds ?? Number.NaN,
  }),

  launches: (input: Parameters<typeof launchesLeft>[0]) => ({ launches: launchesLeft(input) }),
};
