import { isAtMost } from '../../calc/limit-met.ts';
import { phrase } from '../../words/words.ts';
import { PRACTICE, type Rule } from '../rule.ts';

export const maximumMassExceededEmpty: Rule = {
  code: 'MAXIMUM_MASS_EXCEEDED_EMPTY',
  severity: 'blocks',
  meaning: 'The empty aircraft is heavier than its maximum mass',
  remedy: phrase`Check the figures; no load can be carried`,
  source: PRACTICE,
  check: ({ visit, results, say }) => {
    const emptyKg = results.schedule?.massKg ?? 0;
    if (isAtMost(emptyKg, visit.aircraft.maximumMassKg)) return [];
    const [massText, limitText] = say.apart('mass', emptyKg, visit.aircraft.maximumMassKg);
    return [
      {
        path: ['aircraft', 'maximumMass'],
        sentence: say.words`The empty mass, ${massText}, exceeds the maximum mass, ${limitText}`,
        data: { emptyKg, maximumKg: visit.aircraft.maximumMassKg },
      },
    ];
  },
};
