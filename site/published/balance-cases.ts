import { ballastToAddKg, massToRemoveKg } from '../../worker/core/calc/mass/ballast.ts';
import { armAtPercentMm } from '../../worker/core/calc/mass/mac.ts';
import { atArm, cgMm, total } from '../../worker/core/calc/mass/mass-moment.ts';
import { massToMoveKg, shiftByMovedMm } from '../../worker/core/calc/mass/shift.ts';
import { isAtLeast, isAtMost } from '../../worker/core/calc/numbers/limit-met.ts';

/** A mass with its arm, or with its moment if the source prints that instead. */
interface Part {
  mass: number;
  arm?: number;
  moment?: number;
}

type Wanted = Record<'mass' | 'arm' | 'wanted' | 'place', number>;

const wantedBalance = ({ mass, arm, wanted, place }: Wanted): Parameters<typeof ballastToAddKg>[0] => ({
  massKg: mass,
  armMm: arm,
  wantedArmMm: wanted,
  placeArmMm: place,
});

/** Topics of masses and arms, in any one system of units. */
export const BALANCE_TOPICS = {
  /** Totals, and the moments of the parts by their numbers. */
  'mass-moment': ({ parts }: { parts: Part[] }) => {
    const all = parts.map(({ mass, arm = Number.NaN, moment }) =>
      moment === undefined ? atArm(mass, arm) : { massKg: mass, momentKgMm: moment },
    );
    const sum = total(all);
    const rows = all.map(({ momentKgMm }, index) => [`moment${index + 1}`, momentKgMm]);
    return { mass: sum.massKg, moment: sum.momentKgMm, arm: cgMm(sum), ...Object.fromEntries(rows) };
  },

  'mass-to-move': ({ total: totalKg, shift, distance }: Record<'total' | 'shift' | 'distance', number>) => ({
    mass: massToMoveKg({ totalKg, shiftMm: shift, distanceMm: distance }) ?? Number.NaN,
  }),

  /** Where the centre of gravity was, and the way of the mass. */
  'shift-by-moving': (input: Record<'total' | 'arm' | 'moved' | 'distance', number>) => {
    const shift = shiftByMovedMm({ totalKg: input.total, movedKg: input.moved, distanceMm: input.distance });
    return { shift, arm: input.arm + shift };
  },

  'ballast-to-add': (input: Wanted) => ({ mass: ballastToAddKg(wantedBalance(input)) ?? Number.NaN }),

  'mass-to-remove': (input: Wanted) => ({ mass: massToRemoveKg(wantedBalance(input)) ?? Number.NaN }),

  /** Load moved between two holds, for a shift in per cent of the chord. */
  'move-between-holds': ({ total: totalKg, chord, fromPercent, toPercent, fromHold, toHold }: Holds) => {
    const mac = { leadingEdgeArmMm: 0, lengthMm: chord };
    const shiftMm = armAtPercentMm(mac, toPercent) - armAtPercentMm(mac, fromPercent);
    const distanceMm = toHold.arm - fromHold.arm;
    const moved = massToMoveKg({ totalKg, shiftMm, distanceMm }) ?? Number.NaN;
    return { moved, fromHold: fromHold.mass - moved, toHold: toHold.mass + moved };
  },

  /** Whether a value meets the limits of the source: 1 for yes, 0 for no. */
  'within-limits': ({ value, minimum, maximum }: { value: number; minimum?: number; maximum?: number }) => ({
    isWithin: Number(
      isAtLeast(value, minimum ?? Number.NEGATIVE_INFINITY) && isAtMost(value, maximum ?? Number.POSITIVE_INFINITY),
    ),
  }),
};

interface Holds {
  total: number;
  chord: number;
  fromPercent: number;
  toPercent: number;
  fromHold: { mass: number; arm: number };
  toHold: { mass: number; arm: number };
}
