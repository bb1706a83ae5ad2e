import { saysSomething } from '../../text/printable.ts';
import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type Rule } from '../rule.ts';

export const carriedIncomplete: Rule = {
  code: 'CARRIED_INCOMPLETE',
  severity: 'blocks',
  meaning:
    'An answer to an open item lacks its reason or its evidence; where it is extended or superseded, the evidence is the entry of this record that holds the new limit or takes its place',
  remedy: phrase`Give the reason, and as evidence where it was done, or the entry of this record that holds the new limit`,
  source: PRACTICE,
  check: ({ visit, results, say }) => {
    const withoutEntry = new Set(results.open.withoutEntry);
    return (visit.carried ?? []).flatMap(({ item, answer, reason, evidence }, index): Hit[] => {
      const path = ['carried', index];
      const data = { item };
      if (answer === 'repeated') return [];
      return [
        ...(!saysSomething(reason)
          ? [{ path: [...path, 'reason'], sentence: say.words`${item} is answered for without a reason`, data }]
          : []),
        ...(!saysSomething(evidence)
          ? [{ path: [...path, 'evidence'], sentence: say.words`${item} is answered for without evidence`, data }]
          : []),
        ...(saysSomething(evidence) && withoutEntry.has(index)
          ? [
              {
                path: [...path, 'evidence'],
                sentence: say.words`${item} refers to “${evidence}”, which is nothing in this record that stands open`,
                data,
              },
            ]
          : []),
      ];
    });
  },
};
