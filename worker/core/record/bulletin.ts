import type * as z from 'zod';
import * as m from '../text/generated/messages.ts';
import { choice, date, line, list, number, part, pastDate, person, reference } from './field.ts';
import { meaning } from './meaning.ts';
import { PRODUCTS } from './product.ts';

export const SerialRange = part('serialRange', {
  from: line('serialRange_from', 'D2-0050', 60),
  to: line('serialRange_to', 'D2-0140', 60),
});

export const Applicability = part('applicability', {
  product: choice('applicability_product', ['airframe', ...PRODUCTS, 'equipment'] as const),
  serials: list('applicability_serials', SerialRange, { max: 40 }).optional(),
  partNumbers: list('applicability_partNumbers', line('applicability_partNumbers_each', 'HT-21', 60), {
    max: 40,
  }).optional(),
});

export const Bulletin = part('bulletin', {
  id: meaning(line('bulletin_id', 'D2-SB-014', 40), { kind: 'identifier', of: ['bulletin'], isText: true }),
  revision: line('bulletin_revision', 'B', 20).optional(),
  issuer: line('bulletin_issuer', 'Ravel Light Aircraft', 80),
  subject: line('bulletin_subject', 'Flap hinge bolts'),
  kind: choice('bulletin_kind', ['directive', 'mandatory', 'recommended', 'information'] as const),
  applicability: Applicability,
  status: choice('bulletin_status', ['complied', 'recurring', 'not-applicable', 'declined', 'open'] as const),
  reason: line('bulletin_reason', 'Later bolts fitted at build').optional(),
  document: line('bulletin_document', 'Ravel letter 2026-14 to serial number D2-0117').optional(),
  confirmedBy: person('bulletin_confirmedBy', 'jonas', m.bulletin_confirmed, {
    scope: 'release',
    on: 'assessment',
  }).optional(),
  method: line('bulletin_method', 'Option 2: bolts replaced').optional(),
  evidence: line('bulletin_evidence', 'Task T31').optional(),
  doneOn: pastDate('bulletin_doneOn', '2026-11-04', m.bulletin_compliance, {
    before: ['visit.workEndedAt'],
  }).optional(),
  nextDueDate: date('bulletin_nextDueDate', '2027-11-04').optional(),
  nextDueHours: number('bulletin_nextDueHours', 'h', 1304.9, {
    min: 0,
    max: 200_000,
  }).optional(),
  meter: reference('meter', 'bulletin_meter', 'airframe').optional(),
  by: person('bulletin_by', 'jonas', m.bulletin_assessed).optional(),
});
export type Bulletin = z.infer<typeof Bulletin>;

export const Bulletins = part('bulletins', {
  searchedOn: pastDate('bulletins_searchedOn', '2026-11-03', m.bulletin_searchBulletins).optional(),
  sources: list('bulletins_sources', line('bulletins_sources_each', 'Maker’s list of 2026-11-01'), {
    max: 30,
  }).optional(),
  items: list('bulletins_items', Bulletin, { max: 300 }),
});
export type Bulletins = z.infer<typeof Bulletins>;
