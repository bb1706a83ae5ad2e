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
import { usedParts } from './used-parts.ts';

export const Deferral = part('deferral', {
  by: person('deferral_by', 'jonas', m.visitFinding_deferred, {
    scope: 'release',
    on: ['foundAt', 'visit.arrivedAt'],
  }),
  reason: line('deferral_reason', 'Part on order; no effect on safe flight by day'),
  untilDate: date('deferral_untilDate', '2027-01-31').optional(),
  untilHours: number('deferral_untilHours', 'h', 1230, {
    min: 0,
    max: 200_000,
  }).optional(),
  meter: reference('meter', 'deferral_meter', 'airframe').optional(),
  firstDeferredOn: pastDate('deferral_firstDeferredOn', '2026-11-05', m.visitFinding_firstTimeDeferred, {
    after: ['foundAt'],
  }),
  timesCarried: count('deferral_timesCarried', 0, { max: 99 }).optional(),
  placard: line('deferral_placard', 'LANDING LIGHT INOPERATIVE').optional(),
  ownerInformed: flag('deferral_ownerInformed', true),
});

/** When a finding that is only monitored is reviewed again. */
export const LookAgain = part('lookAgain', {
  date: date('lookAgain_date', '2027-05-31').optional(),
  hours: number('lookAgain_hours', 'h', 1254.9, { min: 0, max: 200_000 }).optional(),
  meter: reference('meter', 'deferral_meter', 'airframe').optional(),
  landings: count('counters_landings', 2400, { max: 10_000_000 }).optional(),
});

export const Declined = part('declined', {
  by: line('declined_by', 'R. Lindqvist', 80),
  at: timestamp('declined_at', '2026-11-04T16:00:00+01:00', m.visitFinding_ownerSDecisionFinding, {
    after: ['foundAt'],
    early: 'The owner may have declined it at an earlier visit',
    late: 'The owner may decide when taking the aircraft over',
  }),
});

export const VisitFinding = part('visitFinding', {
  id: identifier(['finding'], 'visitFinding_id', 'F1'),
  place: line('visitFinding_place', 'Left main wheel', 80),
  text: line('visitFinding_text', 'Brake lining at 3.2 mm, near the limit of 3.0 mm'),
  severity: choice('visitFinding_severity', ['airworthiness', 'limit', 'watch', 'advice'] as const),
  disposition: choice('visitFinding_disposition', [
    'rectified',
    'deferred',
    'declined',
    'monitor',
    'open',
  ] as const).optional(),
  foundBy: person('visitFinding_foundBy', 'mila', m.visitFinding_found).optional(),
  // A finding deferred before this visit was also found before it.
  foundAt: timestamp('visitFinding_foundAt', '2026-11-03T11:00:00+01:00', m.visitFinding_finding, {
    earlierUntil: 'deferral.firstDeferredOn',
  }).optional(),
  parts: usedParts(),
  action: line('visitFinding_action', 'Lining replaced').optional(),
  closedBy: person('visitFinding_closedBy', 'mila', m.visitFinding_closed).optional(),
  closedAt: timestamp('visitFinding_closedAt', '2026-11-04T12:00:00+01:00', m.visitFinding_closingFinding, {
    after: ['foundAt'],
  }).optional(),
  consequence: line('visitFinding_consequence', 'Disc scored within some 20 landings').optional(),
  costNow: number('visitFinding_costNow', 'workshop.currency', 140, {
    min: 0,
  }).optional(),
  costIfLeft: number('visitFinding_costIfLeft', 'workshop.currency', 620, {
    min: 0,
  }).optional(),
  declined: Declined.optional(),
  deferral: Deferral.optional(),
  lookAgain: LookAgain.optional(),
  limitation: line('visitFinding_limitation', 'Finding F6: by day only until it is reviewed').optional(),
  evidence: list('visitFinding_evidence', line('visitFinding_evidence_each', 'Photo 14'), {
    max: 20,
  }).optional(),
});
export type VisitFinding = z.infer<typeof VisitFinding>;

export const VisitFindings = list('visitFindings', VisitFinding, { max: 300 });
