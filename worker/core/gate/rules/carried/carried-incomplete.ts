import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { saysSomething } from '../../../text/printable.ts';
import { type EntryHit, hitsIn } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

export const carriedIncomplete: Rule = {
  code: 'CARRIED_INCOMPLETE',
  severity: 'blocks',
  meaning: 'The answer to an open item has no reason, or no evidence in this record',
  remedy: m.carriedIncomplete_remedy,
  source: PRACTICE,
  check: ({ visit, results }) => {
    const withoutEntry = new Set(results.open.withoutEntry);
    return hitsIn(['carried'], visit.carried, ({ item, answer, reason, evidence }, index) => {
      if (answer === 'repeated') return undefined;
      const data = { item };
      const found: EntryHit[] = [];
      if (!saysSomething(reason))
        found.push({ field: 'reason', sentence: said(m.carriedIncomplete_answeredWithoutReason, { item }), data });
      if (!saysSomething(evidence))
        found.push({ field: 'evidence', sentence: said(m.carriedIncomplete_answeredWithoutEvidence, { item }), data });
      else if (withoutEntry.has(index)) {
        const sentence = said(m.carriedIncomplete_refersNothingRecordStands, { item, evidence });
        found.push({ field: 'evidence', sentence, data });
      }
      return found;
    });
  },
};
