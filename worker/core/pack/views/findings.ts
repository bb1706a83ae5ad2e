import type { VisitFinding } from '../../record/visit.ts';
import { DASH } from '../../text/dash.ts';
import * as m from '../../text/generated/messages.ts';
import type { PackContext } from '../context.ts';
import { nameOf } from '../people.ts';
import type { View } from '../render.ts';
import { accepted } from './accepted.ts';
import { carriedRows } from './carried-rows.ts';
import { common, sources } from './common.ts';
import { dueLimit } from './due-limit.ts';
import { findingName } from './open-items.ts';

const SEVERITIES = {
  airworthiness: m.findings_airworthiness,
  limit: m.findings_nearLimit,
  watch: m.findings_watched,
  advice: m.findings_advice,
} as const;
const DISPOSITIONS = {
  rectified: m.findings_putRight,
  deferred: m.deferred,
  declined: m.findings_declinedOwner,
  monitor: m.findings_watched2,
  open: m.open,
} as const;

export function findingsView(context: PackContext): View {
  const { fmt } = context;
  const findings = context.visit.findings ?? [];
  const deferred = findings.filter(({ disposition }) => disposition === 'deferred');
  const left = findings.filter(({ disposition }) => disposition === 'declined' || disposition === 'monitor');
  return {
    ...common(context),
    ...accepted(context, '/findings', '/carried'),
    hasFindings: findings.length > 0,
    count: String(findings.length),
    findings: findings.map((finding) => findingRow(context, finding)),
    carried: carriedRows(context),
    hasCarried: context.results.open.before.length > 0,
    hasDeferred: deferred.length > 0,
    deferred: deferred.map((finding) => deferralRow(context, finding)),
    hasLeft: left.length > 0,
    left: left.map(({ id, text, consequence, disposition, declined, lookAgain }) => ({
      id: findingName(context, id),
      text,
      disposition: `${fmt.text(DISPOSITIONS[disposition ?? 'open'])}${declined ? `: ${declined.by}, ${fmt.day(declined.at)}` : ''}`,
      again: (lookAgain && dueLimit(context.visit, lookAgain, fmt)) ?? DASH,
      consequence: consequence ?? DASH,
    })),
    ...costView(context),
    ...sources(fmt.text(m.findings_whatBearsAirworthinessPut)),
  };
}

function findingRow(context: PackContext, finding: VisitFinding): Record<string, string> {
  const { visit, fmt } = context;
  const { id, place, text, severity, disposition, action, closedBy, closedAt, evidence } = finding;
  return {
    id: findingName(context, id),
    place,
    text,
    severity: fmt.text(SEVERITIES[severity]),
    disposition: fmt.text(DISPOSITIONS[disposition ?? 'open']),
    action: action ?? DASH,
    closed: closedBy ? `${nameOf(visit, closedBy)}${closedAt ? `, ${fmt.day(closedAt)}` : ''}` : DASH,
    evidence: evidence?.join('; ') ?? DASH,
  };
}

function deferralRow(context: PackContext, { id, text, deferral }: VisitFinding): Record<string, string> {
  const { visit, fmt } = context;
  return {
    id: findingName(context, id),
    text,
    limit:
      dueLimit(visit, { date: deferral?.untilDate, hours: deferral?.untilHours, meter: deferral?.meter }, fmt) ??
      fmt.text(m.noLimit),
    reason: deferral?.reason ?? DASH,
    by: nameOf(visit, deferral?.by),
    first: deferral
      ? fmt.text(m.findings_carriedTimes, {
          firstDeferredOn: fmt.date(deferral.firstDeferredOn),
          timesCarried: deferral.timesCarried ?? 0,
        })
      : DASH,
    placard: deferral?.placard ?? fmt.text(m.none),
  };
}

/** Returns cost now and cost if left, so that the owner can decide. */
function costView(context: PackContext): View {
  const { visit, fmt } = context;
  const currency = visit.workshop.currency ?? '';
  const money = (amount: number | undefined): string => (amount === undefined ? DASH : fmt.plain(amount, 0));
  const priced = (visit.findings ?? []).filter(
    ({ costNow, costIfLeft }) => costNow !== undefined || costIfLeft !== undefined,
  );
  return {
    hasCosts: priced.length > 0,
    currency,
    costs: priced.map(({ id, text, costNow, costIfLeft, consequence }) => ({
      id: findingName(context, id),
      text,
      now: money(costNow),
      left: money(costIfLeft),
      consequence: consequence ?? DASH,
    })),
  };
}
