import type * as z from 'zod';
import * as m from '../text/generated/messages.ts';
import { choice, date, identifier, line, list, number, part, pastDate, person } from './field.ts';

export const ReleaseDocument = part('releaseDocument', {
  kind: choice('releaseDocument_kind', [
    'release-certificate',
    'conformity-certificate',
    'maker-statement',
    'owner-declaration',
    'standard-part',
  ] as const),
  reference: line('releaseDocument_reference', 'RC-88213'),
  date: pastDate('releaseDocument_date', '2026-09-14', m.partsTrace_releaseDocumentPart).optional(),
});

export const Part = part('part', {
  id: identifier(['part'], 'part_id', 'P3'),
  description: line('part_description', 'Brake lining'),
  partNumber: line('part_partNumber', 'BL-66', 60).optional(),
  serialOrBatch: line('part_serialOrBatch', 'B 2291', 60).optional(),
  quantity: number('part_quantity', '1', 2, { min: 0 }),
  supplier: line('part_supplier', 'Stockwell Aero Parts', 80).optional(),
  condition: choice('part_condition', ['new', 'overhauled', 'serviceable', 'owner-made'] as const).optional(),
  releaseDocument: ReleaseDocument.optional(),
  shelfLifeUntil: date('part_shelfLifeUntil', '2028-01-31').optional(),
  fittedOn: pastDate('part_fittedOn', '2026-11-04', m.partsTrace_fittingPart, {
    after: ['visit.arrivedAt', 'releaseDocument.date'],
    before: ['visit.workEndedAt'],
  }).optional(),
  receivedBy: person('part_receivedBy', 'mila', m.partsTrace_receivedPart).optional(),
});
export type Part = z.infer<typeof Part>;

export const Parts = list('parts', Part, { max: 500 });
