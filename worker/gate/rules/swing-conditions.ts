import { phrase } from '../../words/words.ts';
import { type Hit, type Rule, read } from '../rule.ts';

export const swingConditions: Rule = {
  code: 'SWING_CONDITIONS',
  severity: 'caution',
  meaning: 'The compass was swung with the engine off or out of the attitude of level flight',
  remedy: phrase`Swing it as it is used`,
  source: read('former 23.1547 (level flight, engines operating)'),
  check: ({ visit, say }) => {
    const { compass } = visit;
    if (!compass) return [];
    const hits: Hit[] = [];
    if (!compass.engineRunning)
      hits.push({ path: ['compass', 'engineRunning'], sentence: say.words`The compass was swung with the engine off` });
    if (!compass.level)
      hits.push({
        path: ['compass', 'level'],
        sentence: say.words`The compass was swung out of the attitude of level flight`,
      });
    return hits;
  },
};
