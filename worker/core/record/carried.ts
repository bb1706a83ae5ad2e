import type * as z from 'zod';
import * as m from '../text/generated/messages.ts';
import { choice, line, list, part, person, timestamp } from './field.ts';

/** Outcomes of an item that was open after the last pack. */
export const CARRIED_ANSWERS = ['closed', 'repeated', 'extended', 'superseded'] as const;

export const Carried = part(
  'carried',
  {
    item: line('carried_item', 'Q-SLM-P1/F4', 100),
    answer: choice('carried_answer', CARRIED_ANSWERS),
    // An extension is a decision about the release; a statement of what was done is not.
    by: person('carried_by', 'jonas', m.carried_answered, {
      scope: 'release',
      on: ['at'],
      where: { answer: 'extended' },
    }),
    at: timestamp('carried_at', '2026-11-05T13:10:00+01:00', m.carried_answer),
    reason: line('carried_reason', 'Damper overhauled, no play left').optional(),
    evidence: line('carried_evidence', 'M1').optional(),
  },
  'item',
);
export type Carried = z.infer<typeof Carried>;

export const CarriedItems = list('carriedItems', Carried, { max: 300 });
