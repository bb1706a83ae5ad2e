import type { Applies } from '../../calc/lives/applicability.ts';
import type { Visit } from '../../record/visit.ts';
import { DASH } from '../../text/dash.ts';
import * as m from '../../text/generated/messages.ts';
import type { Message } from '../../text/message.ts';
import type { PackContext } from '../context.ts';
import { nameOf } from '../people.ts';
import type { View } from '../render.ts';
import { accepted } from './accepted.ts';
import { common, sources } from './common.ts';
import { dueLimit } from './due-limit.ts';

type Bulletin = NonNullable<Visit['bulletins']>['items'][number];

const APPLIES: Record<Applies, Message> = {
  applies: m.bulletins_applies,
  'does-not-apply': m.bulletins_notApply,
  undecided: m.bulletins_undecided,
};
const STATES = {
  complied: m.bulletins_complied,
  recurring: m.bulletins_recurring,
  'not-applicable': m.bulletins_notApplicable,
  declined: m.bulletins_declined,
  open: m.open,
} as const;

export function bulletinsView(context: PackContext): View {
  const { visit, results, fmt } = context;
  const record = visit.bulletins;
  return {
    ...common(context),
    ...accepted(context, '/bulletins'),
    searched: fmt.text(m.bulletins_searched, {
      searchedOn: record?.searchedOn ? fmt.date(record.searchedOn) : fmt.text(m.bulletins_noStatedDay),
      sources: record?.sources?.join('; ') ?? DASH,
    }),
    count: String(record?.items.length ?? 0),
    items: (record?.items ?? []).map((bulletin, index) =>
      bulletinRow(context, bulletin, results.applicability[index] ?? 'undecided'),
    ),
    ...sources(fmt.text(m.bulletins_applicabilityFollowsSerialPart)),
  };
}

function bulletinRow({ visit, fmt }: PackContext, bulletin: Bulletin, applies: Applies): Record<string, string> {
  const {
    id,
    revision,
    issuer,
    subject,
    kind,
    applicability,
    status,
    reason,
    document,
    confirmedBy,
    method,
    evidence,
    doneOn,
    nextDueDate,
    nextDueHours,
    meter,
  } = bulletin;
  const confirmed = confirmedBy && fmt.text(m.bulletins_confirmedBy, { person: nameOf(visit, confirmedBy) });
  const serials = applicability.serials?.map(({ from, to }) => fmt.text(m.to, { text: from, text2: to })).join(', ');
  return {
    id: `${id}${revision ? fmt.text(m.bulletins_rev, { revision }) : ''}`,
    subject: `${subject} (${issuer})`,
    kind: fmt.term(kind),
    concerns: `${[fmt.term(applicability.product), serials, applicability.partNumbers?.join(', ')].filter(Boolean).join(': ')}; ${fmt.text(APPLIES[applies])}`,
    status: fmt.text(STATES[status]),
    how: [reason, document, confirmed, method, evidence].filter(Boolean).join('; ') || DASH,
    done: doneOn ? fmt.date(doneOn) : DASH,
    next: dueLimit(visit, { date: nextDueDate, hours: nextDueHours, meter }, fmt) ?? DASH,
  };
}
