import { envelopeOf } from '../../calc/loading/envelope.ts';
import { phrase } from '../../words/words.ts';
import { PRACTICE, type Rule } from '../rule.ts';

export const envelopeNotUsable: Rule = {
  code: 'ENVELOPE_NOT_USABLE',
  severity: 'blocks',
  meaning: 'The corners of the envelope do not bound an area',
  remedy: phrase`Give the corners in order round it; no level of mass may cross it more than twice`,
  source: PRACTICE,
  check: ({ visit, say }) => {
    const { envelope } = visit.aircraft;
    if (!envelope || envelopeOf(envelope)) return [];
    return [
      {
        path: ['aircraft', 'envelope'],
        sentence: say.words`The corners of the envelope do not bound an area with one forward and one aft limit`,
      },
    ];
  },
};
