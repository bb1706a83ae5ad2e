import type { Aircraft, Weighing } from '../../record/visit.ts';
import { isAtLeast, isAtMost } from '../numbers/limit-met.ts';
import { hungCg } from './hang.ts';
import type { HangResult } from './hang-result.ts';
import { rectangular } from './uncertainty.ts';

export type { HangResult } from './hang-result.ts';

type HangTest = NonNullable<Weighing['hangTests']>[number];

/**
 * Returns the hang tests against the permitted band, and the centre of gravity from the first test without and the first
 * with a known added mass; undefined without tests.
 *
 * @source FAA-H-8083-21 (hang test), read, for the band; the sums of `hungCg` are derived from statics
 */
export function hangResults({ hangBolt }: Aircraft, { hangTests = [] }: Weighing): HangResult | undefined {
  if (hangTests.length === 0) return undefined;
  return {
    tests: hangTests.map(({ state, angleDeg }) => ({
      state,
      angleDeg,
      isWithin: hangBolt && isAtLeast(angleDeg, hangBolt.minimumDeg) && isAtMost(angleDeg, hangBolt.maximumDeg),
    })),
    cg: hangBolt && cgOf(hangBolt.armMm, hangTests),
  };
}

function cgOf(boltArmMm: number, tests: readonly HangTest[]): HangResult['cg'] {
  const bare = tests.find(({ massKg, addedMassKg }) => massKg !== undefined && addedMassKg === undefined);
  const loaded = tests.find(({ addedMassKg }) => addedMassKg !== undefined);
  if (bare?.massKg === undefined || loaded?.addedMassKg === undefined) return undefined;
  return hungCg({
    massKg: bare.massKg,
    boltArmMm,
    // The record counts nose down, the sums tail down.
    firstDeg: -bare.angleDeg,
    secondDeg: -loaded.angleDeg,
    addedKg: loaded.addedMassKg,
    addedAftMm: loaded.addedAftOfBoltMm ?? 0,
    addedBelowMm: loaded.addedBelowBoltMm ?? 0,
    standardReadingDeg: rectangular(Math.max(bare.angleLimitDeg ?? 0, loaded.angleLimitDeg ?? 0)),
  });
}
