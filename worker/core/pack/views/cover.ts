import type { ReleaseClock } from '../../calc/clock/release-clock.ts';
import { isAtLeast } from '../../calc/numbers/limit-met.ts';
import type { Finding } from '../../gate/finding.ts';
import { pointsOf, type ReleasePoint } from '../../gate/points.ts';
import { DASH } from '../../text/dash.ts';
import * as m from '../../text/generated/messages.ts';
import { sentence } from '../../text/sentence.ts';
import { clockChart } from '../chart/clock-chart.ts';
import type { PackContext } from '../context.ts';
import { nameOf } from '../people.ts';
import type { View } from '../render.ts';
import { common } from './common.ts';
import { durationText } from './duration.ts';
import { notCovered } from './not-covered.ts';
import { sealedByLine } from './sealed-by.ts';

/** A document after the cover; one outside the same file has no page there to link to. */
export interface Following {
  id: string;
  title: string;
  isAboard: boolean;
}

/** Returns cover and contents. The contents list the documents that follow. */
export function coverView(context: PackContext, following: readonly Following[]): View {
  const { visit, identity, issuedAt, findings, released, fmt } = context;
  const of = (severity: Finding['severity']): Finding[] => findings.filter((finding) => finding.severity === severity);
  const blocks = of('blocks');
  const cautions = of('caution');
  const parts = notCovered(context);
  return {
    ...common(context),
    registration: visit.aircraft.registration,
    workshop: visit.workshop.name,
    address: visit.workshop.address ?? DASH,
    approval: visit.workshop.approval ?? DASH,
    pack: identity?.pack ?? DASH,
    issue: identity?.issue ?? DASH,
    issuedAt: fmt.timestamp(issuedAt),
    supersedes: identity?.supersedes ?? fmt.text(m.none),
    sealedBy: sealedByLine(context),
    arrived: fmt.timestamp(visit.visit.arrivedAt),
    built: visit.aircraft.yearBuilt === undefined ? DASH : String(visit.aircraft.yearBuilt),
    hasOwner: visit.aircraft.owner !== undefined,
    owner: partyText(visit.aircraft.owner),
    hasOperator: visit.aircraft.operator !== undefined,
    operator: partyText(visit.aircraft.operator),
    ended: visit.visit.workEndedAt ? fmt.timestamp(visit.visit.workEndedAt) : DASH,
    summary: visit.visit.summary,
    replaces: replacesLine(context),
    notCovered: parts === '' ? '' : fmt.text(m.notCovered_line, { parts }),
    releaseLine: released
      ? fmt.text(m.cover_released, {
          releasedBy: released.releasedBy.name,
          capacity: released.releasedBy.capacity,
          authorisation: released.releasedBy.authorisation ?? DASH,
        })
      : openLine(
          context,
          pointsOf(blocks).length,
          cautions.filter(({ acknowledgedBy }) => acknowledgedBy === undefined).length,
        ),
    hasBlocks: blocks.length > 0,
    blocks: pointsOf(blocks).map((point) => pointView(context, point)),
    ...cautionsView(context, cautions),
    ...clockView(context),
    ...contentsView(following),
  };
}

function pointView({ fmt }: PackContext, { point, places, consequences }: ReleasePoint<Finding>): View {
  const { code, sentence: text, remedy } = point;
  return {
    ...{ code, sentence: text, remedy },
    places: places.length === 0 ? '' : fmt.text(m.cover_morePlaces, { count: places.length }),
    hasConsequences: consequences.length > 0,
    consequences: consequences.map((consequence) => ({ code: consequence.code, sentence: consequence.sentence })),
  };
}

function cautionsView(context: PackContext, cautions: readonly Finding[]): View {
  const { visit, fmt } = context;
  return {
    hasCautions: cautions.length > 0,
    cautions: cautions.map(({ code, sentence: text, acknowledgedBy }) => ({
      code,
      sentence: text,
      accepted: sentence(
        acknowledgedBy
          ? fmt.text(m.cover_accepted, { visit: nameOf(visit, acknowledgedBy), reasonFor: reasonFor(context, code) })
          : fmt.text(m.cover_notYetAcceptedAnybody),
      ),
    })),
  };
}

/** More documents than this are listed in two columns, so that the contents stay on the cover. */
const ONE_COLUMN = 16;

function contentsView(following: readonly Following[]): View {
  const rows = following.map(({ id, title, isAboard }) => ({ id, title, isAboard }));
  const first = rows.length > ONE_COLUMN ? Math.ceil(rows.length / 2) : rows.length;
  return { contents: rows.slice(0, first), hasFurther: first < rows.length, further: rows.slice(first) };
}

const partyText = (party: PackContext['visit']['aircraft']['owner']): string =>
  party ? [party.name, party.address, party.contact].filter(Boolean).join(', ') : DASH;

/** Returns the remaining work and daylight; empty once the aircraft is released. */
function clockView(context: PackContext): View {
  const { results, released, visit, fmt } = context;
  const { plan, readyAt } = results.clock;
  if (released || (plan.jobs.length === 0 && !visit.departure)) return { hasClock: false };
  return {
    hasClock: true,
    hasJobs: plan.jobs.length > 0,
    clockChart: plan.jobs.length > 0 ? clockChart(results.clock, fmt) : '',
    left: workLeft(plan.jobs.length, durationText(plan.totalMin, fmt), fmt),
    ready: fmt.timestamp(readyAt),
    slack: slackText(context),
    limit: visit.departure?.limit ?? '',
    sunset: sunsetText(context),
    next: plan.next
      ? `${plan.next.id} ${plan.next.text}, ${nameOf(visit, plan.next.by)}`
      : fmt.text(m.cover_nothingLeftWorksheet),
  };
}

function workLeft(jobs: number, duration: string, fmt: PackContext['fmt']): string {
  if (jobs === 0) return fmt.text(m.none);
  return jobs === 1
    ? fmt.text(m.cover_1JobPeopleHand, { duration })
    : fmt.text(m.cover_jobsPeopleHand, { jobs, duration });
}

/** Whether the latest take-off lies before the present time, independent of the remaining work. */
function isDeparturePast({ plan, slackMin }: ReleaseClock): boolean {
  return slackMin !== undefined && !isAtLeast(slackMin + plan.totalMin, 0);
}

function slackText({ results, fmt }: PackContext): string {
  const { slackMin } = results.clock;
  if (slackMin === undefined) return fmt.text(m.cover_noDeparturePlanned);
  if (isDeparturePast(results.clock)) return fmt.text(m.cover_latestTakeOffPassed);
  return slackMin < 0
    ? fmt.text(m.cover_tooLateLatestTake, { slackMin: durationText(-slackMin, fmt) })
    : fmt.text(m.cover_latestTakeOff, { slackMin: durationText(slackMin, fmt) });
}

/** Returns the sunset compared with the arrival; a dash for a flight that can no longer be flown as planned. */
function sunsetText({ results, fmt }: PackContext): string {
  const { sunsetAt, daylightMin, isDarkAtArrival } = results.clock;
  if (isDarkAtArrival === undefined || isDeparturePast(results.clock)) return DASH;
  if (sunsetAt === undefined || daylightMin === undefined)
    return isDarkAtArrival ? fmt.text(m.cover_sunDownThereMore) : fmt.text(m.cover_sunNotSetThere);
  return daylightMin < 0
    ? fmt.text(m.cover_beforeArrival, {
        sunsetAt: fmt.timestamp(sunsetAt),
        daylightMin: durationText(-daylightMin, fmt),
      })
    : fmt.text(m.cover_afterArrival, {
        sunsetAt: fmt.timestamp(sunsetAt),
        daylightMin: durationText(daylightMin, fmt),
      });
}

function openLine({ results, fmt }: PackContext, blocks: number, cautions: number): string {
  if (blocks === 0 && cautions === 0 && !results.open.isKnown) return fmt.text(m.cover_nothingRecordStandsWay);
  if (blocks === 0 && cautions === 0) return fmt.text(m.cover_nothingStandsWayRelease);
  return fmt.text(m.cover_notReleasedReleaseAccepted, { blocks, cautions });
}

function reasonFor({ visit }: PackContext, code: string): string {
  return visit.release?.acknowledgements?.find((acceptance) => acceptance.code === code)?.reason ?? DASH;
}

/** Which issue this pack replaces, and why; empty for a first one. */
function replacesLine({ earlierIssue, visit, fmt }: PackContext): string {
  const reason = visit.release?.reasonForIssue;
  return earlierIssue && reason !== undefined
    ? fmt.text(m.issueChanges_replaces, { pack: earlierIssue.pack, reason: sentence(reason) })
    : '';
}
