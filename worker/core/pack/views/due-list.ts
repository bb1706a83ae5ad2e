import type { OpenDue } from '../../calc/open-items/time-left.ts';
import { hoursOnMeter } from '../../record/meter-name.ts';
import { DASH } from '../../text/dash.ts';
import type { Formatter } from '../../text/formatter.ts';
import * as m from '../../text/generated/messages.ts';
import type { Message } from '../../text/message.ts';
import type { PackContext } from '../context.ts';
import type { View } from '../render.ts';
import { accepted } from './accepted.ts';
import { certificateRows } from './certificate-rows.ts';
import { common, sources } from './common.ts';
import { countTexts } from './due-limit.ts';
import { itemsDue, leftText, limitText, listed, sinceNewText } from './items-due.ts';
import { meterRows } from './meter-rows.ts';
import { itemName } from './open-items.ts';

const BASES = {
  directive: m.dueList_directive,
  bulletin: m.bulletin,
  'life-limit': m.dueList_lifeLimit,
  programme: m.dueList_programme,
  recommendation: m.dueList_recommended,
  owner: m.dueList_owner,
} as const;

const KINDS: Partial<Record<OpenDue['kind'], Message>> = {
  due: m.dueList_maintenance,
  bulletin: m.bulletin,
  deferral: m.deferred,
  watch: m.dueList_lookAgain,
  certificate: m.dueList_ofCertificate,
};

/** Returns the kind of an item, and the reason for which it comes due. */
export function kindText(
  { kind, basis }: { kind: OpenDue['kind']; basis?: OpenDue['basis'] | undefined },
  fmt: Formatter,
): string {
  const ofKind = KINDS[kind];
  const names = [ofKind && fmt.text(ofKind), basis && basis !== kind && fmt.text(BASES[basis])];
  return names.filter(Boolean).join(', ');
}

/** Whether any item comes due, by this record or by an earlier one. */
export function hasDue(context: PackContext): boolean {
  const { lives, certificates = [] } = context.visit;
  return lives !== undefined || certificates.length > 0 || itemsDue(context).length > 0;
}

/** Returns the one list of items due, of every kind. */
export function dueListView(context: PackContext): View {
  const { fmt } = context;
  const { hoursPerYear } = context.results.readings;
  return {
    ...common(context),
    ...accepted(context, '/lives', '/certificates', '/meters'),
    meters: meterRows(context),
    use:
      hoursPerYear === undefined
        ? fmt.text(m.dueList_notStatedNoForecast)
        : fmt.text(m.dueList_hYear, { hoursPerYear: fmt.plain(hoursPerYear, 0) }),
    lines: itemsDue(context).map((due) => dueRow(context, due)),
    ...certificateRows(context),
    ...sources(fmt.text(m.dueList_dueWhicheverComesFirst), fmt.text(m.dueList_forecastAssumesUseStated)),
  };
}

function dueRow(context: PackContext, due: OpenDue): Record<string, string> {
  const { visit, fmt } = context;
  const { kind, of, meter, counters, done = {} } = due;
  const { sinceNew = '', others } = sinceNewText(context, due, done);
  return {
    id: itemName(context, due),
    item: kind === 'certificate' ? fmt.term(due.text) : due.text,
    kind: kindText(due, fmt),
    last: listed([
      others.date ? fmt.date(others.date) : '',
      others.hours === undefined ? '' : hoursOnMeter(visit, { hours: others.hours, meter, of }, fmt),
      ...countTexts(visit, others, counters, fmt),
      sinceNew,
    ]),
    due: limitText(context, due),
    left: leftText(context, due),
    forecast: due.forecastDate ? fmt.date(due.forecastDate) : DASH,
    state: due.isOverdue
      ? due.isWithinTolerance
        ? fmt.text(m.dueList_withinTolerance)
        : fmt.text(m.dueList_overdue)
      : '',
    reference: due.reference ?? DASH,
  };
}
