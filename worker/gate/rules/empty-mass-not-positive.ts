import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const emptyMassNotPositive: Rule = {
  code: 'EMPTY_MASS_NOT_POSITIVE',
  severity: 'blocks',
  meaning: 'The weighing, or the papers with all changes, leave no empty mass',
  remedy: phrase`Check readings, tare, items aboard and the masses taken out`,
  source: PRACTICE,
  check: ({ visit, results, say }) => {
    const { baseline, weighing } = visit;
    const hits: Hit[] = [];
    if (weighing && !results.weighing)
      hits.push({ path: ['weighing'], sentence: say.words`Readings less tare and items aboard leave no empty mass` });
    const isStated = (baseline?.emptyArmMm ?? baseline?.emptyMomentKgMm) !== undefined;
    if (isStated && !results.prediction)
      hits.push({
        path: ['baseline', 'emptyMass'],
        sentence: say.words`The empty mass in the papers, with all corrections and changes, leaves no mass`,
      });
    return hits;
  },
};
