import type { Applies } from '../../calc/lives/applicability.ts';
import { DASH } from '../../text/dash.ts';
import type { Visit } from '../../visit/visit.ts';
import { phrase } from '../../words/words.ts';
import type { PackContext } from '../context.ts';
import type { View } from '../render.ts';
import { common, sources } from './common.ts';
import { dueLimit } from './due-limit.ts';

type Bulletin = NonNullable<Visit['bulletins']>['items'][number];

const APPLIES: Record<Applies, string> = {
  applies: phrase`applies`,
  'does-not-apply': phrase`does not apply`,
  undecided: phrase`UNDECIDED`,
};
const STATES = {
  complied: phrase`complied`,
  recurring: phrase`recurring`,
  'not-applicable': phrase`not applicable`,
  declined: phrase`declined`,
  open: phrase`OPEN`,
} as const;

export function bulletinsView(context: PackContext): View {
  const { visit, results, say } = context;
  const record = visit.bulletins;
  return {
    ...common(context),
    searched: say.words`Searched ${record?.searchedOn ? say.date(record.searchedOn) : say.words`on no stated day`} in: ${record?.sources?.join('; ') ?? DASH}.`,
    count: String(record?.items.length ?? 0),
    items: (record?.items ?? []).map((bulletin, index) =>
      bulletinRow(context, bulletin, results.applicability[index] ?? 'undecided'),
    ),
    ...sources(
      say.words`Applicability as it follows from serial and part numbers in the record; a reason given by a person stands beside it. A directive or mandatory bulletin that applies cannot be declined.`,
    ),
  };
}

function bulletinRow({ visit, say }: PackContext, bulletin: Bulletin, applies: Applies): Record<string, string> {
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
    meter,
  } = bulletin;
  const serials = applicability.serials?.map(({ from, to }) => say.words`${from} to ${to}`).join(', ');
  return {
    id: `${id}${revision ? say.words`, rev. ${revision}` : ''}`,
    subject: `${subject} (${issuer})`,
    kind: say.term(kind),
    concerns: `${[say.term(applicability.product), serials, applicability.partNumbers?.join(', ')].filter(Boolean).join(': ')}; ${say.term(APPLIES[applies])}`,
    status: say.term(STATES[status]),
    how: [reason, method, evidence].filter(Boolean).join('; ') || DASH,
    done: doneOn ? say.date(doneOn) : DASH,
    next: dueLimit(visit, { date: nextDueDate, hours: nextDueHours, meter }, say) ?? DASH,
  };
}
