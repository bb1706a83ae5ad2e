import { isAtLeast, isAtMost } from '../../calc/limit-met.ts';
import { phrase } from '../../words/words.ts';
import { PRACTICE, type Rule } from '../rule.ts';

/** Empty mass as a share of maximum mass: from bare weight-shift machines to overloaded two-seaters. */
const LEAST_SHARE = 0.25;
const MOST_SHARE = 1.5;

export const unitImplausible: Rule = {
  code: 'UNIT_IMPLAUSIBLE',
  severity: 'blocks',
  meaning: 'A mass does not fit the aircraft at all: most often pounds taken for kilograms',
  remedy: phrase`Check the units that the record declares, and the figure`,
  source: PRACTICE,
  check: ({ visit, results, say }) => {
    const { schedule } = results;
    if (!schedule) return [];
    const share = schedule.massKg / visit.aircraft.maximumMassKg;
    if (isAtLeast(share, LEAST_SHARE) && isAtMost(share, MOST_SHARE)) return [];
    const path = visit.weighing ? ['weighing'] : ['baseline', 'emptyMass'];
    return [
      {
        path,
        sentence: say.words`An empty mass of ${say.measure('mass', schedule.massKg)} does not fit a maximum mass of ${say.measure('mass', visit.aircraft.maximumMassKg)}`,
        data: { emptyKg: schedule.massKg, maximumKg: visit.aircraft.maximumMassKg },
      },
    ];
  },
};
