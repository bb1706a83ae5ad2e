import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { saysSomething } from '../../../text/printable.ts';
import { type Hit, PRACTICE, type Rule } from '../../rule.ts';

export const carriedIncomplete: Rule = {
  code: 'CARRIED_INCOMPLETE',
  severity: 'blocks',
  meaning:
    'An answer to an open item lacks its reason or its evidence; where it is extended or superseded, the evidence is the entry of this record that holds the new limit or takes its place',
  remedy: m.carriedIncomplete_remedy,
  source: PRACTICE,
  check: ({ visit, results }) => {
    const withoutEntry = new Set(results.open.withoutEntry);
    return (visit.carried ?? []).flatMap(({ item, answer, reason, evidence }, index): Hit[] => {
      const path = ['carried', index];
      const data = { item };
      if (answer === 'repeated') return [];
      return [
        ...(!saysSomething(reason)
          ? [{ path: [...path, 'reason'], sentence: said(m.carriedIncomplete_answeredWithoutReason, { item }), data }]
          : []),
        ...(!saysSomething(evidence)
          ? [
              {
                path: [...path, 'evidence'],
                sentence: said(m.carriedIncomplete_answeredWithoutEvidence, { item }),
                data,
              },
            ]
          : []),
        ...(saysSomething(evidence) && withoutEntry.has(index)
          ? [
              {
                path: [...path, 'evidence'],
                sentence: said(m.carriedIncomplete_refersNothingRecordStands, { item, evidence }),
                data,
              },
            ]
          : []),
      ];
    });
  },
};
