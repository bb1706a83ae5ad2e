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

/** Reasons for which something is not owed; no other reason counts. */
export const NOT_OWED_REASONS = [
  'not-fitted',
  'maker-approved-data',
  'shown-elsewhere',
  'not-touched',
  'excluded-by-limitation',
  'like-for-like',
] as const;
export type NotOwedReason = (typeof NOT_OWED_REASONS)[number];

/** Statement of an authorised person that something is not owed. */
export const NotOwed = part(
  'notOwed',
  {
    evidence: choice('notOwed_evidence', EVIDENCE),
    of: reference(['equipment-item', 'modification', 'opening'], 'notOwed_of', 'E31').optional(),
    reason: choice('notOwed_reason', NOT_OWED_REASONS),
    shownBy: line('notOwed_shownBy', 'Installation manual HR-760 rev. 5, 4.2'),
    by: person('notOwed_by', 'jonas', m.notOwed_stated),
    secondBy: person('notOwed_secondBy', 'mila', m.notOwed_agreed).optional(),
    at: timestamp('notOwed_at', '2026-11-05T14:00:00+01:00', m.notOwed_statement, {
      late: 'It may be decided after the end of work, before the release',
    }),
  },
  'evidence',
);
export type NotOwed = z.infer<typeof NotOwed>;

export const NotOwedList = list('notOwedList', NotOwed, { max: 120 });
