import { isAtLeast } from '../../calc/limit-met.ts';
import { phrase } from '../../words/words.ts';
import { memory, type Rule } from '../rule.ts';

export const enduranceShort: Rule = {
  code: 'ENDURANCE_SHORT',
  severity: 'caution',
  meaning: 'The battery does not last long enough after the source has failed',
  remedy: phrase`Shed more, fit a greater battery, or state it as a limit of the aircraft`,
  source: memory('14 CFR 23.1353(h): 30 minutes; else the reserve of the record'),
  check: ({ results, say }) => {
    const endurance = results.electrical?.endurance;
    if (!endurance || endurance.minutes === undefined || isAtLeast(endurance.minutes, endurance.neededMin)) return [];
    const { minutes, neededMin } = endurance;
    const [minutesText, neededText] = say.plainApart(minutes, neededMin, 0);
    return [
      {
        path: ['electrical', 'battery'],
        sentence: say.words`The battery carries the essential loads for ${minutesText} min; ${neededText} min are needed`,
        data: { minutes, neededMin },
      },
    ];
  },
};
