import * as m from '../../text/generated/messages.ts';
import { NONE_SET, PRACTICE, read } from '../source.ts';
import { generic } from './generic.ts';
import type { Regime } from './regime.ts';

/** United States: experimental and light-sport aircraft under 14 CFR 43, 65 and 91 and their operating limitations. */
export const usExperimental: Regime = {
  ...generic,
  id: 'us-experimental',
  title: m.regime_usExperimental,
  version: '2026-12-01',
  statements: [
    {
      id: 'work-complete',
      title: m.statement_maintenanceEntry,
      covers: ['work', 'weighing'],
      wording: m.statement_maintenanceEntryText,
      ruleWording: 'The signature constitutes the approval for return to service only for the work performed.',
      source: read('14 CFR 43.9(a)(4)'),
    },
    {
      id: 'inspection-airworthy',
      title: m.statement_inspectionAirworthy,
      covers: ['inspection'],
      wording: m.statement_inspectionAirworthyText,
      ruleWording:
        'I certify that this aircraft has been inspected in accordance with (insert type) inspection and was determined to be in airworthy condition.',
      source: read('14 CFR 43.11(a)(4)'),
    },
    {
      id: 'condition-inspection',
      title: m.statement_conditionInspection,
      covers: ['inspection'],
      wording: m.statement_conditionInspectionText,
      // Each aircraft has its own operating limitations; their words come first.
      source: { text: 'operating limitations of the aircraft', status: 'practice' },
    },
    {
      id: 'weighing-only',
      title: m.statement_weighing,
      covers: ['weighing'],
      wording: m.statement_weighingSupersedesText,
      source: read('14 CFR 43.9(a)'),
    },
  ],
  // A major change needs a log entry and a flight test by the operating limitations, no approval.
  approvalNeeded: {
    value: ['standard-change', 'maker-approved'],
    unit: 'classes',
    source: read('14 CFR 43.9(a)(1), 43.9(d)'),
  },
  // 14 CFR 43 has no general rule of a second person.
  secondInspection: { value: true, unit: 'yes or no', source: PRACTICE },
  reweighYears: { value: null, unit: 'years', source: NONE_SET },
  negligibleMassKg: { value: 0.45359237, unit: 'kg', source: read('AC 43.13-1B 10-2c') },
  standardPersonKg: { value: 77.1107029, unit: 'kg', source: read('14 CFR 23.25(a)(2)') },
  massCapKg: { value: null, unit: 'kg', source: read('14 CFR 22.100') },
};
