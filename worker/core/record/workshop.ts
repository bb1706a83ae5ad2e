import type * as z from 'zod';
import * as m from '../text/generated/messages.ts';
import { LANGUAGES } from '../text/languages.ts';
import { PAPER_NAMES } from '../units/paper-size.ts';
import { choice, line, part, prose, timestamp } from './field.ts';

export const Workshop = part('workshop', {
  name: line('workshop_name', 'Lower Meadow Hangar'),
  address: line('workshop_address', 'Hangar 2, Lower Meadow Airfield').optional(),
  approval: line('workshop_approval', 'SLM-MO-014').optional(),
  contact: line('workshop_contact', 'office@lower-meadow.example').optional(),
  currency: choice('workshop_currency', [
    'EUR',
    'USD',
    'GBP',
    'CHF',
    'SEK',
    'NOK',
    'DKK',
    'PLN',
    'CZK',
    'CAD',
    'AUD',
    'NZD',
  ] as const).optional(),
  paper: choice('workshop_paper', PAPER_NAMES).optional(),
  language: choice('workshop_language', LANGUAGES).optional(),
});
export type Workshop = z.infer<typeof Workshop>;

export const Visit = part('visit', {
  arrivedAt: timestamp('visit_arrivedAt', '2026-11-03T09:10:00+01:00', m.workshop_arrival, {
    early: 'It is the arrival itself',
  }),
  workEndedAt: timestamp('visit_workEndedAt', '2026-11-05T14:05:00+01:00', m.workshop_endWork, {
    late: 'It is the end of work itself',
  }).optional(),
  summary: prose('visit_summary', 'New radio and transponder, 100-hour service.'),
});
export type Visit = z.infer<typeof Visit>;
