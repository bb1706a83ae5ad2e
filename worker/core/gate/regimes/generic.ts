import * as m from '../../text/generated/messages.ts';
import { NONE_SET, PRACTICE, read } from '../source.ts';
import type { Regime } from './regime.ts';

/** The default: cautious figures for any light aircraft. It is not law anywhere; local rules come first. */
export const generic: Regime = {
  id: 'generic',
  title: m.regime_generic,
  version: '2026-12-01',
  statements: [
    {
      id: 'work-complete',
      title: m.statement_workComplete,
      covers: ['work', 'inspection', 'weighing'],
      wording: m.statement_workCompleteText,
      source: read('14 CFR 43.9(a)'),
    },
    {
      id: 'weighing-only',
      title: m.statement_weighing,
      covers: ['weighing'],
      wording: m.statement_weighingText,
      source: PRACTICE,
    },
  ],
  approvalNeeded: {
    value: ['major', 'standard-change', 'maker-approved'],
    unit: 'classes',
    source: PRACTICE,
  },
  secondInspection: {
    value: true,
    unit: 'yes or no',
    source: read('AMC4 145.A.48(b), AMC1 CAO.A.060(h)'),
  },
  reweighYears: { value: 10, unit: 'years', source: PRACTICE },
  reweighChangeShare: { value: 0.02, unit: 'share of empty mass', source: PRACTICE },
  reweighMacPercent: { value: null, unit: '% MAC', source: NONE_SET },
  negligibleMassKg: {
    value: 0.45359237,
    unit: 'kg',
    source: read('AC 43.13-1B 10-2c'),
  },
  negligibleMacPercent: {
    value: 0.05,
    unit: '% MAC',
    source: read('AC 43.13-1B 10-2c'),
  },
  predictionToleranceKg: { value: 1, unit: 'kg', source: PRACTICE },
  predictionToleranceMm: { value: 5, unit: 'mm', source: PRACTICE },
  leftRightShare: { value: 0.03, unit: 'share of both mains', source: PRACTICE },
  runsDisagreeShare: { value: 0.002, unit: 'share of total', source: PRACTICE },
  levelToleranceDeg: { value: 0.5, unit: '°', source: PRACTICE },
  leastPilotKg: { value: 55, unit: 'kg', source: PRACTICE },
  standardPersonKg: {
    value: 86,
    unit: 'kg',
    source: PRACTICE,
  },
  soloMassHighKg: { value: 70, unit: 'kg', source: PRACTICE },
  minimumPayload: { value: null, unit: 'kg and h', source: NONE_SET },
  massCapKg: { value: null, unit: 'kg', source: NONE_SET },
  massCapRotorcraftKg: { value: null, unit: 'kg', source: NONE_SET },
  massCapWaterKg: { value: null, unit: 'kg', source: NONE_SET },
  deferralsCarried: { value: 2, unit: 'times', source: PRACTICE },
  deferralDaysLongest: { value: 365, unit: 'days', source: PRACTICE },
  bulletinSearchDays: { value: 7, unit: 'days', source: PRACTICE },
  releaseDays: {
    value: 30,
    unit: 'days',
    source: { text: 'ML.A.305(a), entries within 30 days', status: 'memory' },
  },
};
