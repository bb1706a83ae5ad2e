import type * as z from 'zod';
import * as m from '../text/generated/messages.ts';
import { PAPER_NAMES } from '../units/paper-size.ts';
import { LANGUAGES } from '../words/language.ts';
import { choice, line, part, prose, timestamp } from './field.ts';

export const Workshop = part('Workshop', 'Who took the aircraft in', {
  name: line('Name', 'Name of the workshop as it signs', 'Lower Meadow Hangar'),
  address: line('Address', 'Postal address on one line', 'Hangar 2, Lower Meadow Airfield').optional(),
  approval: line(
    'Approval',
    'Reference of the approval held by the workshop, where it holds one',
    'SLM-MO-014',
  ).optional(),
  contact: line('Contact', 'How the owner reaches the workshop', 'office@lower-meadow.example').optional(),
  currency: choice('Currency', 'Currency of costs, ISO 4217', [
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
  paper: choice('Paper', 'Paper that its packs are printed on', PAPER_NAMES).optional(),
  language: choice(
    'Language',
    'Language that its packs, pages and findings are written in, ISO 639-1',
    LANGUAGES,
  ).optional(),
});
export type Workshop = z.infer<typeof Workshop>;

export const Visit = part('Visit', 'The visit as a whole', {
  arrivedAt: timestamp('Arrived', 'When the aircraft was taken in', '2026-11-03T09:10:00+01:00', m.workshop_arrival, {
    early: 'It is the arrival itself',
  }),
  workEndedAt: timestamp(
    'Work ended',
    'When the last task of the visit was finished',
    '2026-11-05T14:05:00+01:00',
    m.workshop_endWork,
    { late: 'It is the end of work itself' },
  ).optional(),
  summary: prose(
    'Summary',
    'What was asked for and done, in one or two sentences',
    'New radio and transponder, 100-hour service.',
  ),
});
export type Visit = z.infer<typeof Visit>;
