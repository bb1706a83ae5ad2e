import { tanksOf } from '../../calc/loading/fuel.ts';
import { isBaggagePlace, loadStationsOf } from '../../calc/loading/load-space.ts';
import type { OpenItem } from '../../calc/open-items/open-item.ts';
import { namedMeter } from '../../calc/open-items/stands-open.ts';
import { classDataOf } from '../../record/classes/index.ts';
import type { Aircraft } from '../../record/visit.ts';
import { MAX } from '../../text/figure.ts';
import * as m from '../../text/generated/messages.ts';
import { sentence } from '../../text/sentence.ts';
import type { PackContext } from '../context.ts';
import { flightText } from '../flight-text.ts';
import { nextDue } from '../next-due.ts';
import type { View } from '../render.ts';
import { bothSystems } from './both-systems.ts';
import { classCautions, enduranceLine, pilotComputesLine } from './class-sections.ts';
import { common, sources } from './common.ts';
import { dueLimit } from './due-limit.ts';
import { kindText } from './due-list.ts';
import { findingName, heldOver, itemName, limitationTexts, openUntil } from './open-items.ts';
import { ownerAnswer } from './owner-answer.ts';
import { loadLimitRows, massLimitRows } from './pilot-limits.ts';
import { closedSince, rectified } from './work-done.ts';

/** Max. number of due items in the summary; the due list has the rest. */
const MAX_DUE = 3;

/** Returns the facts that an owner needs before flying home, in plain words. */
export function ownerSummaryView(context: PackContext): View {
  const { visit, results, released, fmt } = context;
  const { schedule, loading } = results;
  const watch = watched(context);
  const limitations = limitationTexts(context);
  const due = nextDue(context, context.issuedAt).slice(0, MAX_DUE);
  return {
    ...common(context),
    answer: ownerAnswer(context, limitations.length > 0),
    limitations,
    hasLimitations: limitations.length > 0,
    hasSchedule: schedule !== undefined,
    use: released ? fmt.text(m.ownerSummary_useTakeOlderCards) : fmt.text(m.ownerSummary_draftNotUse),
    hasTanks: tanksOf(visit.aircraft).length > 0,
    hasBaggage: loadStationsOf(visit.aircraft).some(isBaggagePlace),
    hasPropeller: turnsPropeller(visit.aircraft),
    hasEnvelope: loading?.envelope !== undefined,
    limits: limitRows(context),
    classCautions: classCautions(context),
    configuration: visit.aircraft.configuration?.name ?? '',
    hasConfigurations: results.configurations.length > 0,
    endurance: enduranceLine(context),
    pilotComputes: pilotComputesLine(context),
    modifications: (visit.modifications ?? []).map(({ id, title, supplement }) => ({
      id,
      title,
      read: supplement
        ? fmt.text(m.ownerSummary_read, { supplement: supplement.text })
        : fmt.text(m.ownerSummary_nothingChangesPilot),
    })),
    hasModifications: (visit.modifications ?? []).length > 0,
    work: sentence(visit.visit.summary),
    flights: (visit.flights ?? []).map((flight) => flightText(flight, fmt)),
    hasFlights: (visit.flights ?? []).length > 0,
    weighing: visit.weighing ? fmt.text(m.weighed2) : '',
    inspection: visit.inspection
      ? fmt.text(m.ownerSummary_doneTasks, { kind: visit.inspection.kind, count: visit.inspection.tasks.length })
      : fmt.text(m.ownerSummary_noInspectionVisit),
    watch,
    hasWatch: watch.length > 0,
    due: due.map((item) => ({ what: item.what, kind: kindText(item, fmt), limit: item.limit })),
    hasDue: due.length > 0,
    rectified: rectified(context),
    hasRectified: rectified(context).length > 0,
    closed: closedSince(context),
    hasClosed: closedSince(context).length > 0,
    ...sources(fmt.text(m.ownerSummary_summaryNotReleaseResults)),
  };
}

/** Returns what the owner watches: findings of the visit that are not rectified, and what is carried over from before. */
function watched(context: PackContext): View[] {
  const { visit, fmt } = context;
  const open = (visit.findings ?? []).filter(
    ({ disposition }) => disposition === 'deferred' || disposition === 'monitor' || disposition === 'declined',
  );
  return [
    ...open.map((finding) => ({
      id: findingName(context, finding.id),
      text: `${finding.place}: ${sentence(finding.text)}`,
      what: watchLine(context, finding),
      consequence: finding.consequence
        ? fmt.text(m.ownerSummary_ifLeft, { sentence: sentence(finding.consequence) })
        : '',
    })),
    ...heldOver(context, 'deferral', 'watch').map((item) => ({
      id: itemName(context, item),
      text: sentence(item.text),
      what: item.kind === 'watch' ? keepEye(context, undefined, openUntil(context, item)) : toBeDone(context, item),
      consequence: '',
    })),
  ];
}

/** Whether a propeller can turn; the class says so where the record names none. */
function turnsPropeller(aircraft: Aircraft): boolean {
  if (aircraft.propeller) return true;
  return aircraft.engine !== undefined && classDataOf(aircraft).products.includes('propeller');
}

/** Returns the permitted loads from now on; the empty mass, which is not a limit, comes last. */
function limitRows(context: PackContext): View[] {
  const { visit, results, fmt } = context;
  const { schedule } = results;
  if (!schedule) return [];
  return [
    ...massLimitRows(context),
    ...loadLimitRows(context),
    ...(visit.aircraft.loadingLimits ?? []).map(({ text, maximumMassKg }) => ({
      name: text,
      measure: bothSystems(fmt, 'mass', maximumMassKg, MAX),
      note: '',
    })),
    {
      name: fmt.text(m.emptyMass),
      measure: bothSystems(fmt, 'mass', schedule.massKg),
      note: changeNote(context),
    },
  ];
}

function changeNote({ results, fmt }: PackContext): string {
  const { prediction, schedule } = results;
  if (!prediction || !schedule) return '';
  return fmt.text(m.ownerSummary_againstLastSchedule, {
    mass: fmt.measure('mass', schedule.massKg - prediction.baseline.massKg, { signed: true }),
  });
}

type OpenFinding = NonNullable<PackContext['visit']['findings']>[number];

/** Returns what is done about a finding that is only monitored, and when it is reviewed again. */
function keepEye({ fmt }: PackContext, action: string | undefined, limit: string | undefined): string {
  const again = limit === undefined ? [] : [fmt.text(m.ownerSummary_lookAgain, { limit })];
  return [sentence(action ?? fmt.text(m.ownerSummary_keepEye)), ...again].join(' ');
}

function watchLine(context: PackContext, { disposition, deferral, action, lookAgain }: OpenFinding): string {
  const { fmt } = context;
  if (disposition === 'declined') return fmt.text(m.ownerSummary_youDeclinedWork);
  if (disposition === 'monitor') return keepEye(context, action, lookAgain && dueLimit(context.visit, lookAgain, fmt));
  const { untilDate: date, untilHours: hours, meter } = deferral ?? {};
  const until = { ...(date !== undefined && { date }), ...(hours !== undefined && { hours }) };
  return toBeDone(context, { until, ...namedMeter(context.visit, meter) });
}

function toBeDone(context: PackContext, open: Pick<OpenItem, 'until' | 'of' | 'meter'>): string {
  const { fmt } = context;
  const whichever = Object.keys(open.until).length > 1 ? fmt.text(m.ownerSummary_whicheverComesFirst) : '';
  return fmt.text(m.ownerSummary_done, {
    openUntil: openUntil(context, open) ?? fmt.text(m.ownerSummary_limitNobodySet),
    whichever,
  });
}
