import { phrase } from '../../words/words.ts';
import { type Rule, read } from '../rule.ts';

export const envelopeMissing: Rule = {
  code: 'ENVELOPE_MISSING',
  severity: 'blocks',
  meaning: 'The aircraft has no envelope, though its layout has limits on the centre of gravity',
  remedy: phrase`Give the envelope from the flight manual`,
  source: read('FAA-H-8083-1B (weight-shift aircraft alone have no such range)'),
  check: ({ visit, say }) => {
    const { envelope, layout } = visit.aircraft;
    if (envelope || layout === 'weight-shift') return [];
    return [
      {
        path: ['aircraft', 'envelope'],
        sentence: say.words`The record gives no mass and balance envelope`,
        data: { layout },
      },
    ];
  },
};
