import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const acknowledgementUnmatched: Rule = {
  code: 'ACKNOWLEDGEMENT_UNMATCHED',
  severity: 'note',
  meaning: 'A caution is accepted that did not arise',
  remedy: phrase`Take it out`,
  source: PRACTICE,
  check: ({ visit, cautionCodes, say }) =>
    (visit.release?.acknowledgements ?? []).flatMap(({ code }, index): Hit[] =>
      cautionCodes.has(code)
        ? []
        : [
            {
              path: ['release', 'acknowledgements', index],
              sentence: say.words`${code} is accepted, but no such caution arose`,
              data: { code },
            },
          ],
    ),
};
