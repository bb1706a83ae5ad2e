import { PRACTICE } from '../source.ts';
import type { Regime } from './regime.ts';

// A set of cautious figures and not law anywhere. Packs print each value with source and status, unverified ones
// included.

/** The default: cautious figures for any light aircraft. It is not law anywhere; local rules come first. */
export const generic: Regime = {
  id: 'generic',
  title: 'Generic rules (local rules come first)',
  version: '2026-11-01',
  statements: [
    {
      id: 'work-complete',
      title: 'Work complete',
      covers: 'work',
      text: 'The work described in this pack was carried out as recorded, and in respect of that work the aircraft is considered ready to be returned to service within its limits and subject to the limitations stated. This statement covers the work described and nothing else.',
      source: { text: 'own wording; contents after 14 CFR 43.9(a)', status: 'memory' },
    },
    {
      id: 'weighing-only',
      title: 'Weighing',
      covers: 'weighing',
      text: 'The aircraft was weighed as recorded in this pack, and the weight and balance schedule in it replaces the earlier one. This statement covers the weighing and nothing else.',
      source: PRACTICE,
    },
  ],
  approvalNeeded: {
    value: ['major', 'standard-change', 'maker-approved'],
    unit: 'classes',
    source: { text: '14 CFR 43.9 and 91.417 (data used); EU CS-STAN (revision quoted)', status: 'memory' },
  },
  secondInspection: {
    value: true,
    unit: 'yes or no',
    source: { text: '145.A.48 and its acceptable means: error-capturing for critical tasks', status: 'read' },
  },
  reweighYears: { value: 10, unit: 'years', source: PRACTICE },
  reweighChangeShare: { value: 0.02, unit: 'share of empty mass', source: PRACTICE },
  reweighMacPercent: { value: null, unit: '% MAC', source: PRACTICE },
  negligibleMassKg: {
    value: 0.45359237,
    unit: 'kg',
    source: { text: 'AC 43.13-1B para 10-2c: 1 lb for an empty mass below 5,000 lb', status: 'read' },
  },
  negligibleMacPercent: {
    value: 0.05,
    unit: '% MAC',
    source: { text: 'AC 43.13-1B para 10-2c: less than 0.05 % MAC', status: 'read' },
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
    source: { text: 'BCAR Section S, 86 kg per seat, as reported second-hand', status: 'memory' },
  },
  soloMassHighKg: { value: 70, unit: 'kg', source: PRACTICE },
  minimumPayload: { value: null, unit: 'kg and h', source: PRACTICE },
  massCapKg: { value: null, unit: 'kg', source: PRACTICE },
  massCapRotorcraftKg: { value: null, unit: 'kg', source: PRACTICE },
  massCapWaterKg: { value: null, unit: 'kg', source: PRACTICE },
  deferralsCarried: { value: 2, unit: 'times', source: PRACTICE },
  deferralDaysLongest: { value: 365, unit: 'days', source: PRACTICE },
  bulletinSearchDays: { value: 7, unit: 'days', source: PRACTICE },
  releaseDays: {
    value: 30,
    unit: 'days',
    source: { text: 'ML.A.305(a), entries within 30 days, as reported second-hand', status: 'memory' },
  },
};
