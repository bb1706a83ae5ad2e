import type { Applies } from '../../calc/lives/applicability.ts';
import { printDate } from '../../units/calendar.ts';
import type { Visit } from '../../visit/visit.ts';
import type { PackContext } from '../context.ts';
import { DASH } from '../people.ts';
import type { View } from '../render.ts';
import { common, sources } from './common.ts';
import { dueLimit } from './due-limit.ts';

type Bulletin = NonNullable<Visit['bulletins']>['items'][number];

const APPLIES: Record<Applies, string> = {
  applies: 'applies',
  'does-not-apply': 'does not apply',
  undecided: 'UNDECIDED',
};
const STATES = {
  complied: 'complied',
  recurring: 'recurring',
  'not-applicable': 'not applicable',
  declined: 'declined',
  open: 'OPEN',
} as const;

export function bulletinsView(context: PackContext): View {
  const { visit, results } = context;
  const record = visit.bulletins;
  return {
    ...common(context),
    searched: `Searched ${record?.searchedOn ? printDate(record.searchedOn) : 'on no stated day'} in: ${record?.sources?.join('; ') ?? DASH}.`,
    count: String(record?.items.length ?? 0),
    items: (record?.items ?? []).map((bulletin, index) =>
      bulletinRow(bulletin, results.applicability[index] ?? 'undecided'),
    ),
    ...sources(
      'Applicability as it follows from serial and part numbers in the record; a reason given by a person stands beside it. A directive or mandatory bulletin that applies cannot be declined.',
    ),
  };
}

function bulletinRow(bulletin: Bulletin, applies: Applies): Record<string, string> {
  const {
    id,
    revision,
    issuer,
    subject,
    kind,
    applicability,
    status,
    reason,
    method,
    evidence,
    doneOn,
    nextDueDate,
    nextDueHours,
  } = bulletin;
  const serials = applicability.serials?.map(({ from, to }) => `${from} to ${to}`).join(', ');
  return {
    id: `${id}${revision ? `, rev. ${revision}` : ''}`,
    subject: `${subject} (${issuer})`,
    kind,
    concerns: `${[applicability.product, serials, applicability.partNumbers?.join(', ')].filter(Boolean).join(': ')}; ${APPLIES[applies]}`,
    status: STATES[status],
    how: [reason, method, evidence].filter(Boolean).join('; ') || DASH,
    done: doneOn ? printDate(doneOn) : DASH,
    next: dueLimit(nextDueDate, nextDueHours) ?? DASH,
  };
}
