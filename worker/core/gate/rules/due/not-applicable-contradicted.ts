import type { Visit } from '../../../record/visit.ts';
import * as m from '../../../text/generated/messages.ts';
import { type Said, said } from '../../../text/message.ts';
import { saysSomething } from '../../../text/printable.ts';
import { hitsIn } from '../../hits.ts';
import { type Rule, read } from '../../rule.ts';

type Bulletin = NonNullable<Visit['bulletins']>['items'][number];

export const notApplicableContradicted: Rule = {
  code: 'NOT_APPLICABLE_CONTRADICTED',
  severity: 'blocks',
  meaning: 'A bulletin is marked as not applicable, but applies by its serial numbers',
  remedy: m.notApplicableContradicted_remedy,
  source: read('AMC M.A.305(d) (applicability shown)'),
  check: ({ visit, results }) =>
    hitsIn(['bulletins', 'items'], visit.bulletins?.items, (bulletin, index) => {
      const { id, kind, status } = bulletin;
      if (status !== 'not-applicable' || results.applicability[index] !== 'applies') return undefined;
      const isBinding = kind === 'directive' || kind === 'mandatory';
      const sentence = isBinding ? bindingSentence(bulletin) : reasonSentence(bulletin);
      return sentence && { field: 'status', sentence, data: { bulletin: id } };
    }),
};

function reasonSentence({ id, subject, reason }: Bulletin): Said | undefined {
  return saysSomething(reason) ? undefined : said(m.notApplicableContradicted_appliesSerialNumbersNo, { id, subject });
}

/** A reason alone does not set a binding document aside. */
function bindingSentence({ id, subject, document, by, confirmedBy }: Bulletin): Said | undefined {
  if (!saysSomething(document)) return said(m.notApplicableContradicted_bindingNoDocument, { id, subject });
  if (confirmedBy === undefined || confirmedBy === by)
    return said(m.notApplicableContradicted_bindingNotConfirmed, { id, subject });
  return undefined;
}
