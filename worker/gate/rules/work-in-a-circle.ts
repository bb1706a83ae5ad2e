import { phrase } from '../../words/words.ts';
import { PRACTICE, type Rule } from '../rule.ts';

export const workInACircle: Rule = {
  code: 'WORK_IN_A_CIRCLE',
  severity: 'blocks',
  meaning: 'Jobs of the worksheet wait for each other',
  remedy: phrase`Correct what each waits for`,
  source: PRACTICE,
  check: ({ results, say }) => {
    const { circle } = results.clock.plan;
    return circle.length === 0
      ? []
      : [
          {
            path: ['worksheet'],
            sentence: say.words`These jobs wait for each other: ${circle.join(', ')}`,
            data: { jobs: circle.join(' ') },
          },
        ];
  },
};
