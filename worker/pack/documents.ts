import { phrase } from '../words/words.ts';
import type { PackContext } from './context.ts';
import { type DocumentKind, single } from './document.ts';
import { annexes } from './views/annex.ts';
import { antennaRecordView } from './views/antenna-record.ts';
import { bulletinsView } from './views/bulletins.ts';
import { compassCardView } from './views/compass-card.ts';
import { dueListView, hasDue } from './views/due-list.ts';
import { electricalLoadAnalysisView } from './views/electrical-load-analysis.ts';
import { engineRunsView } from './views/engine-runs.ts';
import { equipmentListView } from './views/equipment-list.ts';
import { findingsView } from './views/findings.ts';
import { inspectionRecordView } from './views/inspection-record.ts';
import { loadingSheetView } from './views/loading-sheet.ts';
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
 * Every kind of document between the cover and the record of issue, in the order of the pack. Adding a document adds a
 * folder of templates, a view and a line here.
 */
export const DOCUMENT_KINDS: readonly DocumentKind[] = [
  single('owner-summary', phrase`Owner’s summary`, ownerSummaryView),
  single('release-statement', phrase`Release statement`, releaseStatementView),
  { template: 'modification-record', instances: modificationRecords },
  single('equipment-list', phrase`Equipment list and change sheet`, equipmentListView, hasEquipment),
  single(
    'weighing-report',
    phrase`Weighing report`,
    weighingReportView,
    ({ results }) => results.weighing !== undefined,
  ),
  single(
    'weight-and-balance-schedule',
    phrase`Weight and balance schedule`,
    weightAndBalanceScheduleView,
    ({ results }) => results.schedule !== undefined,
  ),
  single('loading-sheet', phrase`Loading sheet`, loadingSheetView, ({ results }) => results.loading !== undefined),
  single(
    'electrical-load-analysis',
    phrase`Electrical load analysis`,
    electricalLoadAnalysisView,
    ({ visit }) => visit.electrical !== undefined,
  ),
  single('wiring-schedule', phrase`Wiring schedule`, wiringScheduleView, ({ visit }) => visit.wiring !== undefined),
  single('wire-marks', phrase`Wire marks`, wireMarksView, ({ visit }) => visit.wiring !== undefined),
  single('antenna-record', phrase`Antenna record`, antennaRecordView, ({ visit }) => visit.antennas !== undefined),
  single(
    'radio-and-surveillance-record',
    phrase`Radio and surveillance record`,
    radioAndSurveillanceView,
    ({ visit }) => visit.surveillance !== undefined,
  ),
  single('compass-card', phrase`Compass card`, compassCardView, ({ visit }) => visit.compass !== undefined),
  single(
    'inspection-record',
    phrase`Inspection record`,
    inspectionRecordView,
    ({ visit }) => visit.inspection !== undefined,
  ),
  single(
    'engine-runs',
    phrase`Engine runs compared`,
    engineRunsView,
    ({ visit }) => (visit.engineRuns ?? []).length > 0,
  ),
  single(
    'findings',
    phrase`Findings and deferred items`,
    findingsView,
    ({ visit, results }) => (visit.findings ?? []).length + results.open.before.length > 0,
  ),
  single('bulletins', phrase`Bulletins and directives`, bulletinsView, ({ visit }) => visit.bulletins !== undefined),
  single('due-list', phrase`Due list`, dueListView, hasDue),
  single('parts-trace', phrase`Parts trace`, partsTraceView, ({ visit }) => (visit.parts ?? []).length > 0),
  single('photographs', phrase`Photographs`, photographsView, hasPhotographs),
  single('log-book-inserts', phrase`Log-book inserts`, logBookInsertsView, ({ visit }) => visit.release !== undefined),
  { template: 'annex', instances: annexes },
];
