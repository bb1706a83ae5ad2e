import type * as z from 'zod';
import * as m from '../text/generated/messages.ts';
import { choice, line, list, part, person, reference, timestamp } from './field.ts';

/** What work can oblige the workshop to show. */
export const EVIDENCE = [
  'transponder-test',
  'read-back',
  'encoder-check',
  'altimeter-test',
  'static-test',
  'pitot-test',
  'radio-check',
  'interference-check',
  'load-analysis',
  'load-list',
  'battery-entry',
  'continuity-test',
  'antenna-check',
  'compass-swing',
  'control-check',
  'control-travel',
  'free-movement',
  'second-inspection',
  'engine-run',
  'leak-check',
  'new-weighing',
  'flight-test',
  'part-document',
  'due-line',
  'bulletin-search',
  'due-list',
  'programme',
  'closing-check',
  'update-data',
  'placard',
  'special-inspection',
] as const;
export type Evidence = (typeof EVIDENCE)[number];

/** Reasons for which something is not required; no other reason counts. */
export const NOT_REQUIRED_REASONS = [
  'not-fitted',
  'approved-data',
  'shown-elsewhere',
  'not-touched',
  'excluded-by-limitation',
  'like-for-like',
] as const;
export type NotRequiredReason = (typeof NOT_REQUIRED_REASONS)[number];

/** Statement of an authorised person that something is not required. */
export const NotRequired = part(
  'notRequired',
  {
    evidence: choice('notRequired_evidence', EVIDENCE),
    of: reference(['equipment-item', 'modification', 'opening'], 'notRequired_of', 'E31').optional(),
    reason: choice('notRequired_reason', NOT_REQUIRED_REASONS),
    shownBy: line('notRequired_shownBy', 'Installation manual HR-760 rev. 5, 4.2'),
    by: person('notRequired_by', 'jonas', m.notRequired_stated),
    secondBy: person('notRequired_secondBy', 'mila', m.notRequired_agreed).optional(),
    at: timestamp('notRequired_at', '2026-11-05T14:00:00+01:00', m.notRequired_statement, {
      late: 'It may be decided after the end of work, before the release',
    }),
  },
  'evidence',
);
export type NotRequired = z.infer<typeof NotRequired>;

export const NotRequiredList = list('notRequiredList', NotRequired, { max: 120 });
