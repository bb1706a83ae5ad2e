import { rangeText } from '../../gate/range-text.ts';
import type { Task, Visit } from '../../record/visit.ts';
import { DASH } from '../../text/dash.ts';
import type { Formatter } from '../../text/formatter.ts';
import * as m from '../../text/generated/messages.ts';
import { dateOf, timeOf } from '../../units/calendar.ts';
import type { PackContext } from '../context.ts';
import type { DocumentInstance } from '../document.ts';
import { nameOf } from '../people.ts';
import type { View } from '../render.ts';
import { accepted } from './accepted.ts';
import { common, sources } from './common.ts';
import { controlRows } from './control-rows.ts';
import { findingName } from './open-items.ts';
import { releaserSignature } from './releaser-signature.ts';

const RESULTS = {
  satisfactory: m.inspectionRecord_satisfactory,
  rectified: m.inspectionRecord_putRight,
  failed: m.failed,
  'not-applicable': m.inspectionRecord_n,
  open: m.open,
} as const;

/** Returns the inspection record; of a visit without an inspection only the checks of its controls, under that title. */
export function inspectionRecords(context: PackContext): DocumentInstance[] {
  const { fmt, visit } = context;
  const { inspection, controls: { checks = [], disturbed = [] } = {} } = visit;
  if (!inspection && checks.length + disturbed.length === 0) return [];
  const title = fmt.text(inspection ? m.inspectionRecord : m.controlChecks);
  const view = {
    ...common(context),
    ...accepted(context, '/inspection', '/controls', '/closing'),
    ...controlRows(context),
    title,
  };
  return [
    {
      id: 'inspection-record',
      title,
      view: inspection
        ? { ...view, hasInspection: true, ...inspectionView(context, inspection) }
        : { ...view, hasInspection: false, ...sources() },
    },
  ];
}

function inspectionView(context: PackContext, inspection: NonNullable<Visit['inspection']>): View {
  const { fmt } = context;
  const zones = [...new Set(inspection.tasks.map(({ zone }) => zone))];
  const critical = inspection.tasks.filter((task) => task.critical);
  return {
    kind: inspection.kind,
    programme: inspection.programme ?? DASH,
    count: String(inspection.tasks.length),
    criticalCount: String(critical.length),
    tools: inspection.toolsAccountedFor
      ? fmt.text(m.inspectionRecord_allToolsPartsCounted)
      : fmt.text(m.inspectionRecord_notStatedAllTools),
    panels: inspection.panelsClosed
      ? fmt.text(m.inspectionRecord_allPanelsCoversRefitted)
      : fmt.text(m.inspectionRecord_notStatedAllPanels),
    zones: zones.map((zone) => ({
      zone,
      tasks: inspection.tasks.filter((task) => task.zone === zone).map((task) => taskRow(context, task)),
    })),
    hasSeconds: critical.length > 0,
    seconds: critical.map((task) => secondRow(context, task)),
    signatures: releaserSignature(context, fmt.text(m.inspectionRecord_inspectionComplete)),
    ...sources(fmt.text(m.inspectionRecord_zonesAfter14Cfr)),
  };
}

function taskRow(context: PackContext, task: Task): Record<string, string> {
  const { visit, fmt } = context;
  return {
    id: task.critical ? `${task.id} ▲` : task.id,
    text: task.text,
    value: [task.value, readingText(fmt, task.reading)].filter(Boolean).join('; '),
    reference: task.reference ?? DASH,
    result: task.finding
      ? `${fmt.text(RESULTS[task.result])}, ${findingName(context, task.finding)}`
      : fmt.text(RESULTS[task.result]),
    by: nameOf(visit, task.by),
    at: task.at ? `${dateOf(fmt.local(task.at)).slice(8)}. ${timeOf(fmt.local(task.at))}` : DASH,
  };
}

/** Measured value with its limits. */
function readingText(fmt: Formatter, reading: Task['reading']): string | undefined {
  if (!reading) return undefined;
  const { value, unit, least, most } = reading;
  const range = fmt.value(rangeText({ least, most }));
  return fmt.text(m.inspectionRecord_reading, { value: fmt.asIs(value), unit, range });
}

function secondRow({ visit, fmt }: PackContext, task: Task): Record<string, string> {
  const second = task.secondInspection;
  return {
    id: task.id,
    text: task.text,
    by: nameOf(visit, task.by),
    second: second ? nameOf(visit, second.by) : fmt.text(m.inspectionRecord_missing),
    at: second ? fmt.timestamp(second.at) : DASH,
    method: second?.method ?? DASH,
  };
}
