import { memory, read } from '../source.ts';
import { generic } from './generic.ts';
import type { Regime } from './regime.ts';

/** United States: experimental and light-sport aircraft under 14 CFR 43, 65 and 91 and their operating limitations. */
export const usExperimental: Regime = {
  ...generic,
  id: 'us-experimental',
  title: 'United States, experimental and light-sport (14 CFR 43, 65, 91)',
  version: '2026-11-01',
  statements: [
    {
      id: 'work-complete',
      title: 'Maintenance record entry',
      covers: 'work',
      text: 'The work described in this pack was performed and completed on the date stated, with reference to the data named. The signature approves the aircraft for return to service for the work performed and nothing else.',
      source: read('own wording; contents of 14 CFR 43.9(a) and 91.417(a) as summarised'),
    },
    {
      id: 'condition-inspection',
      title: 'Condition inspection',
      covers: 'work',
      text: 'The aircraft was inspected on the date stated in accordance with the scope and detail named in the inspection record and was found to be in a condition for safe operation.',
      source: read(
        'own wording after the certifying sentence that operating limitations ask for (Order 8130.2, as quoted by an owner)',
      ),
    },
    {
      id: 'weighing-only',
      title: 'Weighing',
      covers: 'weighing',
      text: 'The aircraft was weighed as recorded in this pack. The weight and balance record in it supersedes the earlier one. The signature covers the weighing and nothing else.',
      source: memory('own wording; 14 CFR 91.9 and 23.1589'),
    },
  ],
  approvalNeeded: {
    value: ['standard-change', 'maker-approved'],
    unit: 'classes',
    source: memory('operating limitations: a major change needs a log entry and a flight test, no approval'),
  },
  secondInspection: {
    value: true,
    unit: 'yes or no',
    source: memory('14 CFR 43 has no general rule; kept as good practice'),
  },
  reweighYears: { value: null, unit: 'years', source: memory('no interval is set; computed changes are allowed') },
  negligibleMassKg: {
    value: 0.45359237,
    unit: 'kg',
    source: read('AC 43.13-1B para 10-2c: 1 lb for an empty weight below 5,000 lb'),
  },
  standardPersonKg: { value: 77.1107029, unit: 'kg', source: read('170 lb, AMT Handbook General, standard weights') },
  minimumPayload: {
    value: null,
    unit: 'kg and h',
    source: memory('none is set for these aircraft since 2025; their own papers hold'),
  },
};
