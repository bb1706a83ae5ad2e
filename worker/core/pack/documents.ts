import * as m from '../text/generated/messages.ts';
import type { PackContext } from './context.ts';
import { type DocumentKind, single } from './document.ts';
import { annexes } from './views/annex.ts';
import { antennaRecordView } from './views/antenna-record.ts';
import { bulletinsView } from './views/bulletins.ts';
import { compassCardView } from './views/compass-card.ts';
import { componentCardsView, hasCards } from './views/component-cards.ts';
import { dueListView, hasDue } from './views/due-list.ts';
import { electricalLoadAnalysisView } from './views/electrical-load-analysis.ts';
import { engineRunsView } from './views/engine-runs.ts';
import { equipmentListView } from './views/equipment-list.ts';
import { findingsView } from './views/findings.ts';
import { flightsAndMeasurements } from './views/flights-and-measurements.ts';
import { inspectionRecords } from './views/inspection-record.ts';
import { loadingSheets } from './views/loading-sheet.ts';
import { logBookInsertsView } from './views/log-book-inserts.ts';
import { modificationRecords } from './views/modification-record.ts';
import { ownerSummaryView } from './views/owner-summary.ts';
import { partsTraceView } from './views/parts-trace.ts';
import { hasPhotographs, photographsView } from './views/photographs.ts';
import { radioAndSurveillanceView } from './views/radio-and-surveillance-record.ts';
import { releaseStatementView } from './views/release-statement.ts';
import { weighingReportView } from './views/weighing-report.ts';
import { weightAndBalanceScheduleView } from './views/weight-and-balance-schedule.ts';
import { wireMarksView } from './views/wire-marks.ts';
import { wiringScheduleView } from './views/wiring-schedule.ts';

const hasEquipment = ({ results }: PackContext): boolean =>
  results.change.after.length > 0 || results.change.lines.length > 0;

/**
 * Every kind of document between the cover and the issue record, in the order of the pack. A new document is a folder
 * of templates, a view and a line here.
 */
export const DOCUMENT_KINDS: readonly DocumentKind[] = [
  single('owner-summary', m.ownerSSummary, ownerSummaryView),
  single('release-statement', m.releaseStatement, releaseStatementView),
  { template: 'modification-record', instances: modificationRecords },
  single('equipment-list', m.equipmentListChangeSheet, equipmentListView, hasEquipment),
  single('weighing-report', m.weighingReport, weighingReportView, ({ results }) => results.weighing !== undefined),
  single(
    'weight-and-balance-schedule',
    m.weightBalanceSchedule,
    weightAndBalanceScheduleView,
    ({ results }) => results.schedule !== undefined,
  ),
  { template: 'loading-sheet', title: m.loadingSheet, instances: loadingSheets },
  single(
    'electrical-load-analysis',
    m.electricalLoadAnalysis,
    electricalLoadAnalysisView,
    ({ visit }) => visit.electrical !== undefined,
  ),
  single('wiring-schedule', m.wiringSchedule, wiringScheduleView, ({ visit }) => visit.wiring !== undefined),
  single('wire-marks', m.wireMarks, wireMarksView, ({ visit }) => visit.wiring !== undefined),
  single('antenna-record', m.antennaRecord, antennaRecordView, ({ visit }) => visit.antennas !== undefined),
  single(
    'radio-and-surveillance-record',
    m.radioSurveillanceRecord,
    radioAndSurveillanceView,
    ({ visit }) => visit.surveillance !== undefined,
  ),
  single('compass-card', m.compassCard, compassCardView, ({ visit }) => visit.compass !== undefined),
  { template: 'inspection-record', title: m.inspectionRecord, instances: inspectionRecords },
  single('engine-runs', m.engineRunsCompared, engineRunsView, ({ visit }) => (visit.engineRuns ?? []).length > 0),
  { template: 'flights-and-measurements', instances: flightsAndMeasurements },
  single(
    'findings',
    m.findingsDeferredItems,
    findingsView,
    ({ visit, results }) => (visit.findings ?? []).length + results.open.before.length > 0,
  ),
  single('bulletins', m.bulletinsDirectives, bulletinsView, ({ visit }) => visit.bulletins !== undefined),
  single('due-list', m.dueList, dueListView, hasDue),
  single('component-cards', m.componentCards, componentCardsView, hasCards),
  single('parts-trace', m.partsTrace, partsTraceView, ({ visit }) => (visit.parts ?? []).length > 0),
  single('photographs', m.photographs, photographsView, hasPhotographs),
  single('log-book-inserts', m.logBookInserts, logBookInsertsView, ({ visit }) => visit.release !== undefined),
  { template: 'annex', instances: annexes },
];
