import type { Evidence, NotRequiredReason } from '../../record/not-required.ts';
import * as figure from '../../text/figure.ts';
import * as m from '../../text/generated/messages.ts';
import { list, type Said, said } from '../../text/message.ts';
import { termOf } from '../../text/terms.ts';
import { hits } from '../hits.ts';
import type { Rule } from '../rule.ts';
import type { Source } from '../source.ts';
import { EVIDENCE_RULES } from './evidence-rules.ts';
import type { Unfit } from './not-required.ts';
import { type Requirement, unanswered } from './requirement.ts';
import { OBLIGATIONS } from './table.ts';

/** Makes the rule on a piece of evidence that the work requires; what requires it is in the table of obligations. */
export function evidenceRule(evidence: Evidence): Rule {
  return {
    ...EVIDENCE_RULES[evidence],
    source: sourceOf(evidence),
    check: ({ requirements }) =>
      hits(unanswered(requirements, evidence), (open) => ({
        path: open.showing.path ?? open.event.path,
        sentence: sentenceOn(open),
        data: {
          obligation: open.obligation.id,
          evidence,
          ...(open.event.item && { item: open.event.item.id }),
          ...(open.event.at !== undefined && { since: open.event.at }),
        },
      })),
  };
}

/** Sources of the lines of the table that require it, each once. */
function sourceOf(evidence: Evidence): Source {
  const sources = OBLIGATIONS.filter(({ requires }) => requires.includes(evidence)).map(({ source }) => source);
  const texts = [...new Set(sources.map(({ text }) => text))];
  const has = (status: Source['status']): boolean => sources.some((source) => source.status === status);
  const status = has('read') ? 'read' : has('practice') ? 'practice' : 'memory';
  return { text: texts.join(' · '), status };
}

function sentenceOn(open: Requirement): Said {
  const { evidence, event, showing, statements, obligation } = open;
  const sentence = plainSentence({ evidence, event, showing });
  const unfit = statements.find((each) => each.unfit !== undefined)?.unfit;
  return unfit ? said(m.evidence_unfitStatement, { sentence, why: why(unfit, obligation.reasons) }) : sentence;
}

function plainSentence({ evidence: of, event, showing }: Pick<Requirement, 'evidence' | 'event' | 'showing'>): Said {
  const evidence = termOf(of);
  if (event.at === undefined) return said(m.evidence_notRecorded, { event: event.words, evidence });
  const at = figure.timestamp(event.at);
  return showing.olderAt === undefined
    ? said(m.evidence_notRecordedSince, { event: event.words, at, evidence })
    : said(m.evidence_older, { event: event.words, at, evidence, olderAt: figure.timestamp(showing.olderAt) });
}

function why(unfit: Unfit, reasons: readonly NotRequiredReason[]): Said {
  if (unfit === 'reason')
    return said(m.unfit_reason, {
      reasons: list(
        reasons.map((reason) => termOf(reason)),
        '; ',
      ),
    });
  return said(WHY[unfit]);
}

const WHY = {
  'nobody-may': m.unfit_nobodyMay,
  limitation: m.unfit_limitation,
  person: m.unfit_person,
  'second-person': m.unfit_secondPerson,
} as const;
