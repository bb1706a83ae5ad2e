import { isAtLeast, isAtMost } from '../../calc/limit-met.ts';
import { phrase } from '../../words/words.ts';
import { armOutside } from '../range-text.ts';
import { type Rule, read } from '../rule.ts';
import { statedArms } from '../stated-arms.ts';

export const armOutsideAirframe: Rule = {
  code: 'ARM_OUTSIDE_AIRFRAME',
  severity: 'blocks',
  meaning: 'An arm lies outside the airframe: a wrong sign or unit',
  remedy: phrase`Measure it again from the datum`,
  source: read('AC 43.13-1B ch. 10 (arms signed from the datum)'),
  check: ({ visit, say }) => {
    const { forwardMm, aftMm } = visit.aircraft.airframe;
    return statedArms(visit, say)
      .filter(({ armMm }) => !(isAtLeast(armMm, forwardMm) && isAtMost(armMm, aftMm)))
      .map(({ armMm, what, path }) => {
        const { arm, forward, aft } = armOutside(armMm, { forwardMm, aftMm }, say);
        return {
          path,
          sentence: say.words`The arm of ${what}, ${arm}, is outside the airframe (${forward} to ${aft})`,
          data: { armMm, forwardMm, aftMm },
        };
      });
  },
};
