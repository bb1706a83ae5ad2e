import type { RegimeValue } from '../gate/regimes/regime.ts';
import * as m from '../text/generated/messages.ts';
import type { Message } from '../text/message.ts';

/** Names of a regime's values in a table row. */
export const REGIME_VALUE_NAMES: Readonly<Record<RegimeValue, Message>> = {
  approvalNeeded: m.recordOfIssue_approvalNeeded,
  secondInspection: m.recordOfIssue_secondInspection,
  reweighYears: m.recordOfIssue_reweighYears,
  reweighChangeShare: m.recordOfIssue_reweighChangeShare,
  reweighMacPercent: m.recordOfIssue_reweighMac,
  negligibleMassKg: m.recordOfIssue_negligibleMass,
  negligibleMacPercent: m.recordOfIssue_negligibleMac,
  predictionToleranceKg: m.recordOfIssue_predictionTolerance,
  predictionToleranceMm: m.recordOfIssue_predictionTolerance,
  leftRightShare: m.recordOfIssue_leftRightShare,
  runsDisagreeShare: m.recordOfIssue_runsDisagreeShare,
  levelToleranceDeg: m.recordOfIssue_levelTolerance,
  leastPilotKg: m.recordOfIssue_leastPilot,
  standardPersonKg: m.recordOfIssue_standardPerson,
  soloMassHighKg: m.recordOfIssue_soloMassHigh,
  minimumPayload: m.recordOfIssue_minimumPayload,
  massCapKg: m.recordOfIssue_massCap,
  massCapRotorcraftKg: m.recordOfIssue_massCapRotorcraft,
  massCapWaterKg: m.recordOfIssue_massCapWater,
  deferralsCarried: m.recordOfIssue_deferralsCarried,
  deferralDaysLongest: m.recordOfIssue_deferralDaysLongest,
  bulletinSearchDays: m.recordOfIssue_bulletinSearchDays,
  releaseDays: m.recordOfIssue_releaseDays,
};

/** Whether a member of a regime is one of its values. */
export const isRegimeValue = (name: string): name is RegimeValue => name in REGIME_VALUE_NAMES;
