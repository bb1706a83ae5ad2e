import type * as z from 'zod';
import * as m from '../text/generated/messages.ts';
import { choice, date, line, list, number, part, pastDate, person, reference } from './field.ts';
import { meaning } from './meaning.ts';

export const SerialRange = part(
  'Serial range',
  'Serial numbers from and to, both included; compared by their letters and then by their number',
  {
    from: line('From', 'First serial number', 'D2-0050', 60),
    to: line('To', 'Last serial number', 'D2-0140', 60),
  },
);

export const Applicability = part('Applicability', 'What it applies to', {
  product: choice('Product', 'Which product', ['airframe', 'engine', 'propeller', 'equipment'] as const),
  serials: list('Serials', 'Ranges of serial numbers; all, where none is given', SerialRange, { max: 40 }).optional(),
  partNumbers: list(
    'Part numbers',
    'For equipment: part numbers concerned',
    line('Part number', 'Part number', 'HT-21', 60),
    { max: 40 },
  ).optional(),
});

export const Bulletin = part('Bulletin', 'A service bulletin or directive looked at', {
  id: meaning(line('Number', 'Its number', 'D2-SB-014', 40), { kind: 'identifier', of: ['bulletin'], isText: true }),
  revision: line('Revision', 'Its revision', 'B', 20).optional(),
  issuer: line('Issuer', 'Who issued it', 'Ravel Light Aircraft', 80),
  subject: line('Subject', 'What it is about', 'Flap hinge bolts'),
  kind: choice('Kind', 'How far it binds', ['directive', 'mandatory', 'recommended', 'information'] as const),
  applicability: Applicability,
  status: choice('Status', 'What was done', ['complied', 'recurring', 'not-applicable', 'declined', 'open'] as const),
  reason: line('Reason', 'Why it does not apply, or was declined', 'Later bolts fitted at build').optional(),
  method: line('Method', 'How it was complied with; parts done and left', 'Option 2: bolts replaced').optional(),
  evidence: line('Evidence', 'Where that stands', 'Task T31').optional(),
  doneOn: pastDate('Done on', 'Day', '2026-11-04', m.bulletin_compliance).optional(),
  nextDueDate: date('Next due', 'For a recurring one: the day', '2027-11-04').optional(),
  nextDueHours: number('Next due, hours', 'For a recurring one: total hours', 'h', 1304.9, {
    min: 0,
    max: 200_000,
  }).optional(),
  meter: reference(
    'meter',
    'Meter',
    'The meter that the hours are read on; the one of the airframe, if left out',
    'airframe',
  ).optional(),
  by: person('By', 'Person who assessed it', 'jonas', m.bulletin_assessed).optional(),
});
export type Bulletin = z.infer<typeof Bulletin>;

export const Bulletins = part('Bulletins', 'Service bulletins and directives', {
  searchedOn: pastDate(
    'Searched on',
    'Day on which the sources were searched',
    '2026-11-03',
    m.bulletin_searchBulletins,
  ).optional(),
  sources: list('Sources', 'Where was searched', line('Source', 'A source', 'Maker’s list of 2026-11-01'), {
    max: 30,
  }).optional(),
  items: list('Items', 'Every bulletin or directive', Bulletin, { max: 300 }),
});
export type Bulletins = z.infer<typeof Bulletins>;
