import type * as z from 'zod';
import * as m from '../text/generated/messages.ts';
import {
  choice,
  count,
  date,
  flag,
  identifier,
  line,
  list,
  number,
  part,
  pastDate,
  person,
  reference,
  timestamp,
} from './field.ts';

export const Deferral = part('Deferral', 'A finding carried forward', {
  by: person('By', 'Person who decided', 'jonas', m.visitFinding_deferred, {
    scope: 'release',
    on: ['foundAt', 'visit.arrivedAt'],
  }),
  reason: line('Reason', 'Why it can wait', 'Part on order; no effect on safe flight by day'),
  untilDate: date('Until date', 'Last day by which it must be done', '2027-01-31').optional(),
  untilHours: number('Until hours', 'Total hours by which it must be done', 'h', 1230, {
    min: 0,
    max: 200_000,
  }).optional(),
  meter: reference(
    'meter',
    'Meter',
    'The meter that the hours are read on; the one of the airframe, if left out',
    'airframe',
  ).optional(),
  firstDeferredOn: pastDate(
    'First deferred on',
    'Date of the first deferral; carried over unchanged',
    '2026-11-05',
    m.visitFinding_firstTimeDeferred,
  ),
  timesCarried: count('Times carried', 'How often it was carried forward before', 0, { max: 99 }).optional(),
  placard: line('Placard', 'Placard fitted', 'LANDING LIGHT INOPERATIVE').optional(),
  ownerInformed: flag('Owner informed', 'Whether the owner was told', true),
});

export const Declined = part('Declined', 'Work that the owner did not want', {
  by: line('By', 'Name of the owner or the owner’s representative', 'R. Lindqvist', 80),
  at: timestamp('At', 'When', '2026-11-04T16:00:00+01:00', m.visitFinding_ownerSDecisionFinding, {
    after: ['foundAt'],
    early: 'The owner may have declined it at an earlier visit',
    late: 'The owner may decide when taking the aircraft over',
  }),
});

export const VisitFinding = part('Finding', 'Something found wrong with the aircraft', {
  id: identifier(['finding'], 'Identifier', 'How the record names this finding', 'F1'),
  place: line('Place', 'Where', 'Left main wheel', 80),
  text: line('Text', 'What was found', 'Brake lining at 3.2 mm, near the limit of 3.0 mm'),
  severity: choice('Severity', 'What it means for flight', ['airworthiness', 'limit', 'watch', 'advice'] as const),
  disposition: choice('Disposition', 'What was decided', [
    'rectified',
    'deferred',
    'declined',
    'monitor',
    'open',
  ] as const).optional(),
  foundBy: person('Found by', 'Person who found it', 'mila', m.visitFinding_found).optional(),
  // What was deferred before this visit was found before it, too.
  foundAt: timestamp('Found', 'When', '2026-11-03T11:00:00+01:00', m.visitFinding_finding, {
    earlierUntil: 'deferral.firstDeferredOn',
  }).optional(),
  action: line('Action', 'What was done about it', 'Lining replaced').optional(),
  closedBy: person('Closed by', 'Person who closed it', 'mila', m.visitFinding_closed).optional(),
  closedAt: timestamp('Closed', 'When', '2026-11-04T12:00:00+01:00', m.visitFinding_closingFinding, {
    after: ['foundAt'],
  }).optional(),
  consequence: line('Consequence', 'What follows if it is left', 'Disc scored within some 20 landings').optional(),
  costNow: number('Cost now', 'What it costs to put right now, in the workshop’s currency', 'workshop.currency', 140, {
    min: 0,
  }).optional(),
  costIfLeft: number('Cost if left', 'What it is likely to cost if it is left', 'workshop.currency', 620, {
    min: 0,
  }).optional(),
  declined: Declined.optional(),
  deferral: Deferral.optional(),
  evidence: list('Evidence', 'Photographs or sheets by reference', line('Reference', 'Reference', 'Photo 14'), {
    max: 20,
  }).optional(),
});
export type VisitFinding = z.infer<typeof VisitFinding>;

export const VisitFindings = list('Findings', 'Everything found', VisitFinding, { max: 300 });
