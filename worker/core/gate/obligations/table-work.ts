import * as m from '../../text/generated/messages.ts';
import { read } from '../source.ts';
import type { Obligation } from './obligation.ts';

/** Inspections, and what every work requires. */
export const WORK_OBLIGATIONS: readonly Obligation[] = [
  {
    id: 'aircraft-inspected',
    title: m.obligation_aircraftInspected,
    when: { happenings: ['inspected'] },
    requires: ['programme', 'bulletin-search', 'due-list', 'engine-run', 'control-check', 'closing-check'],
    notRequiredBy: 'two-people',
    reasons: ['not-fitted', 'approved-data', 'shown-elsewhere'],
    source: read('14 CFR 43.11(a), 43.15(b) and (c), 43 Appendix D; ML.A.302'),
  },
  {
    id: 'life-item-fitted',
    title: m.obligation_lifeItemFitted,
    when: { happenings: ['fitted'], traits: ['life'] },
    requires: ['due-line'],
    notRequiredBy: 'another',
    reasons: ['not-fitted', 'approved-data'],
    source: read('14 CFR 91.417(a)(2)'),
  },
  {
    id: 'part-fitted',
    title: m.obligation_partFitted,
    when: { happenings: ['fitted'] },
    requires: ['part-document'],
    notRequiredBy: 'two-people',
    reasons: ['approved-data', 'shown-elsewhere'],
    source: read('ML.A.501(a), (c) and (d)'),
  },
  {
    id: 'work-done',
    title: m.obligation_workDone,
    when: {
      happenings: ['fitted', 'taken-out', 'moved', 'opened', 'disturbed', 'inspected', 'part-inspected', 'task-done'],
    },
    requires: ['closing-check'],
    notRequiredBy: 'nobody',
    reasons: [],
    source: read('145.A.48(a): clear of tools, equipment and extraneous parts'),
  },
];
