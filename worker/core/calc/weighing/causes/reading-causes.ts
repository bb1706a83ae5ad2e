import type { Aircraft, Scale, Visit, Weighing } from '../../../record/visit.ts';
import { factorOf } from '../../../units/quantity.ts';
import { meanOf } from '../uncertainty.ts';
import type { ReducedPoint, WeighingResult } from '../weighing-result.ts';
import { fixedCause, type Mismatch, massCause } from './candidate.ts';
import type { Cause } from './causes-result.ts';
import { ARM_RATIOS, slipsOf, swappedDigits } from './digit-slips.ts';

/** Largest mass that lies on a scale under a wheel, in kg. */
const MOST_TARE_KG = 10;
/** Largest reading of an empty scale that nobody noticed, in kg. */
const MOST_ZERO_KG = 3;

type Point = Weighing['points'][number];
type Units = Visit['units'];

/** Returns a slip in writing down a reading, and readings written down at the wrong point. */
export function readingCauses(mismatch: Mismatch, weighing: Weighing, units: Units): Cause[] {
  const slipped = weighing.points.flatMap((point) =>
    slippedReadings(
      mismatch,
      point,
      weighing.scales.find(({ id }) => id === point.scale),
      units,
    ),
  );
  const exchanged = weighing.points.flatMap((one, index) =>
    weighing.points.slice(index + 1).flatMap((other) => {
      const moment = (meanOf(one.readingsKg) - meanOf(other.readingsKg)) * (one.armMm - other.armMm);
      if (moment === 0) return [];
      const effect = { massKg: 0, momentKgMm: moment };
      return fixedCause(mismatch, effect, { kind: 'points-exchanged', of: one.name, and: other.name });
    }),
  );
  return [...slipped, ...exchanged];
}

function slippedReadings(mismatch: Mismatch, point: Point, scale: Scale | undefined, units: Units): Cause[] {
  const factor = factorOf('mass', units);
  const step = (scale?.resolutionKg ?? 0.1 * factor) / factor;
  const slips = point.readingsKg.map((readingKg) => slipsOf(readingKg / factor, step));
  const causeAt = (runs: readonly number[], slip: string): Cause[] => {
    const instead = point.readingsKg.map((readingKg, run) =>
      runs.includes(run) ? (slips[run]?.get(slip) ?? Number.NaN) * factor : readingKg,
    );
    const massKg = meanOf(point.readingsKg) - meanOf(instead);
    if (!Number.isFinite(massKg) || massKg === 0) return [];
    // Corrected, one reading comes closer to the others, and all of them stay as close as they were.
    const [before, after] = [spreadOf(point.readingsKg), spreadOf(instead)];
    if (runs.length < point.readingsKg.length ? after >= before : after > before + 2 * step * factor) return [];
    const [run = 0] = runs;
    return fixedCause(
      mismatch,
      { massKg, momentKgMm: massKg * point.armMm },
      {
        kind: 'reading-slip',
        of: point.name,
        run: runs.length === 1 && point.readingsKg.length > 1 ? run : undefined,
        recorded: { quantity: 'mass', value: point.readingsKg[run] ?? 0, instead: instead[run] ?? 0 },
      },
    );
  };
  const all = point.readingsKg.map((_, run) => run);
  const single = all.length > 1 ? all.map((run) => [run]) : [];
  return [all, ...single].flatMap((runs) =>
    [...(slips[runs[0] ?? 0]?.keys() ?? [])].flatMap((at) => causeAt(runs, at)),
  );
}

const spreadOf = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);

/** Returns tare that was forgotten or subtracted twice, at one point or at all without it. */
export function tareCauses(mismatch: Mismatch, { points }: Weighing): Cause[] {
  const bare = points.filter(({ tareKg }) => !tareKg);
  const forgotten = bare.flatMap(({ name, armMm }) =>
    massCause(mismatch, armMm, [0, MOST_TARE_KG], { kind: 'tare-forgotten', of: name }),
  );
  const everywhere =
    bare.length > 1
      ? massCause(mismatch, meanOf(bare.map(({ armMm }) => armMm)), [0, MOST_TARE_KG * bare.length], {
          kind: 'tare-forgotten',
        })
      : [];
  const tared = points.filter(({ tareKg }) => tareKg);
  const twice = [...tared.map((point) => [point]), ...(tared.length > 1 ? [tared] : [])].flatMap((of) => {
    const massKg = -of.reduce((sum, { tareKg = 0 }) => sum + tareKg, 0);
    const momentKgMm = -of.reduce((sum, { tareKg = 0, armMm }) => sum + tareKg * armMm, 0);
    const name = of.length === 1 ? of[0]?.name : undefined;
    return fixedCause(mismatch, { massKg, momentKgMm }, { kind: 'tare-twice', of: name, massKg: -massKg });
  });
  return [...(everywhere.length > 0 ? everywhere : forgotten), ...twice];
}

/** Returns a scale that did not show zero. */
export function zeroCauses(mismatch: Mismatch, { points }: Weighing): Cause[] {
  return points
    .filter(({ tareKg }) => tareKg || mismatch.residual.massKg < 0)
    .flatMap(({ name, armMm }) =>
      massCause(mismatch, armMm, [-MOST_ZERO_KG, MOST_ZERO_KG], { kind: 'scale-zero', of: name }),
    );
}

/** Returns arms of points that are wrong by their sign, unit or digits, at one point or at all with the same arm. */
export function pointArmCauses(
  mismatch: Mismatch,
  result: WeighingResult,
  { airframe }: Aircraft,
  units: Units,
): Cause[] {
  return groupsByArm(result.points).flatMap((group) => {
    const [{ armMm, name } = { armMm: 0, name: '' }] = group;
    const massKg = group.reduce((sum, point) => sum + point.massKg, 0);
    return slippedArms(armMm, units)
      .filter((instead) => instead >= airframe.forwardMm && instead <= airframe.aftMm)
      .flatMap((instead) =>
        fixedCause(
          mismatch,
          { massKg: 0, momentKgMm: massKg * (armMm - instead) },
          {
            kind: 'point-arm-slip',
            of: name,
            and: group[1]?.name,
            recorded: { quantity: 'arm', value: armMm, instead },
          },
        ),
      );
  });
}

function groupsByArm(points: readonly ReducedPoint[]): ReducedPoint[][] {
  const shared = points
    .map(({ armMm }) => points.filter((point) => point.armMm === armMm))
    .filter((group, index) => group.length > 1 && group[0] === points[index]);
  return [...shared, ...points.map((point) => [point])];
}

function slippedArms(armMm: number, units: Units): number[] {
  const factor = factorOf('arm', units);
  const digits = [...swappedDigits(armMm / factor, units.arm === 'mm' ? 1 : 0.1).values()];
  return [...ARM_RATIOS.map((ratio) => armMm * ratio), ...digits.map((value) => value * factor)].filter(
    (instead) => instead !== armMm,
  );
}
