import type * as z from 'zod';
import * as m from '../text/generated/messages.ts';
import { choice, line, list, part, person, timestamp } from './field.ts';

/** What can become of something that stood open. */
export const CARRIED_ANSWERS = ['closed', 'repeated', 'extended', 'superseded'] as const;

export const Carried = part(
  'Carried item',
  'What this visit did about something that an earlier pack left open',
  {
    item: line(
      'Item',
      'The item for the life of the aircraft: the pack number in which it first stood, and its identifier there',
      'Q-SLM-P1/F4',
      100,
    ),
    answer: choice(
      'Answer',
      'closed: done or no longer there · repeated: stands on as it stood · extended: stands on with the later limit of the entry named as evidence · superseded: the entry named as evidence takes its place',
      CARRIED_ANSWERS,
    ),
    // To give it more time is to decide on the release; to say what was done is not.
    by: person('By', 'Person who decided it', 'jonas', m.carried_answered, {
      scope: 'release',
      on: ['at'],
      where: { answer: 'extended' },
    }),
    at: timestamp('At', 'When', '2026-11-05T13:10:00+01:00', m.carried_answer),
    reason: line('Reason', 'Why; owed for all but repeated', 'Damper overhauled, no play left').optional(),
    evidence: line(
      'Evidence',
      'Where that stands: an entry of this record by its identifier, or a document',
      'M1',
    ).optional(),
  },
  'item',
);
export type Carried = z.infer<typeof Carried>;

export const CarriedItems = list('Carried items', 'Answers to what earlier packs left open', Carried, { max: 300 });
