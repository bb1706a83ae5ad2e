import type * as z from 'zod';
import * as m from '../text/generated/messages.ts';
import { choice, date, identifier, line, list, number, part, pastDate, person } from './field.ts';

export const ReleaseDocument = part('Release document', 'The paper that a part came with', {
  kind: choice('Kind', 'Kind of document', [
    'release-certificate',
    'conformity-certificate',
    'maker-statement',
    'owner-declaration',
    'standard-part',
  ] as const),
  reference: line('Reference', 'Its number', 'RC-88213'),
  date: pastDate('Date', 'Its date', '2026-09-14', m.partsTrace_releaseDocumentPart).optional(),
});

export const Part = part('Part', 'A part or material fitted', {
  id: identifier(['part'], 'Identifier', 'How the record names this part', 'P3'),
  description: line('Description', 'What it is', 'Brake lining'),
  partNumber: line('Part number', 'Part number or specification', 'BL-66', 60).optional(),
  serialOrBatch: line('Serial or batch', 'Serial or batch number', 'B 2291', 60).optional(),
  quantity: number('Quantity', 'How many, in the unit of the part', '1', 2, { min: 0 }),
  supplier: line('Supplier', 'Who supplied it', 'Stockwell Aero Parts', 80).optional(),
  condition: choice('Condition', 'State when fitted', [
    'new',
    'overhauled',
    'serviceable',
    'owner-made',
  ] as const).optional(),
  releaseDocument: ReleaseDocument.optional(),
  shelfLifeUntil: date('Shelf life', 'Last day on which it may be fitted', '2028-01-31').optional(),
  fittedOn: pastDate('Fitted on', 'When it was fitted', '2026-11-04', m.partsTrace_fittingPart).optional(),
  receivedBy: person('Received by', 'Person who inspected it on receipt', 'mila', m.partsTrace_receivedPart).optional(),
});
export type Part = z.infer<typeof Part>;

export const Parts = list('Parts', 'Parts trace', Part, { max: 500 });
