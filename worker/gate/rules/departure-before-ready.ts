import { isAtLeast } from '../../calc/limit-met.ts';
import { phrase } from '../../words/words.ts';
import { PRACTICE, type Rule } from '../rule.ts';

export const departureBeforeReady: Rule = {
  code: 'DEPARTURE_BEFORE_READY',
  severity: 'caution',
  meaning: 'The work left ends after the latest take-off',
  remedy: phrase`Put the departure off; no block becomes a caution because time is short`,
  source: PRACTICE,
  check: ({ results, say }) => {
    const { slackMin, readyAt, plan } = results.clock;
    // With nothing left to do, a departure that has passed is only late.
    if (slackMin === undefined || isAtLeast(slackMin, 0) || plan.totalMin === 0) return [];
    return [
      {
        path: ['departure'],
        sentence: say.words`The work left ends ${say.moment(readyAt)}, ${say.plain(-slackMin, 0)} minutes after the latest take-off`,
        data: { slackMin },
      },
    ];
  },
};
