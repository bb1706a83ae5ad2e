import { phrase } from '../../words/words.ts';
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
      .filter(({ armMm }) => !(armMm >= forwardMm && armMm <= aftMm))
      .map(({ armMm, what, path }) => ({
        path,
        sentence: say.words`The arm of ${what}, ${say.measure('arm', armMm)}, is outside the airframe (${say.number('arm', forwardMm)} to ${say.measure('arm', aftMm)})`,
        data: { armMm, forwardMm, aftMm },
      }));
  },
};
