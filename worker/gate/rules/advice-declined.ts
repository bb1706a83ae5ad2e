import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const adviceDeclined: Rule = {
  code: 'ADVICE_DECLINED',
  severity: 'note',
  meaning: 'The owner declined something that was advised',
  remedy: phrase`Nothing; it is printed`,
  source: PRACTICE,
  check: ({ visit, say }) =>
    (visit.findings ?? []).flatMap(({ id, text, severity, disposition }, index): Hit[] =>
      disposition === 'declined' && severity !== 'airworthiness'
        ? [
            {
              path: ['findings', index],
              sentence: say.words`The owner declined finding ${id}, ${text}`,
              data: { finding: id },
            },
          ]
        : [],
    ),
};
