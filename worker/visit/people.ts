import type * as z from 'zod';
import { choice, date, id, line, list, part } from './field.ts';

/** What a person may sign for. `release` is the right to release the aircraft; the others are kinds of work. */
export const SCOPES = [
  'airframe',
  'engine',
  'propeller',
  'avionics',
  'electrical',
  'weighing',
  'independent-inspection',
  'release',
] as const;
export type Scope = (typeof SCOPES)[number];

export const Person = part('Person', 'Somebody who worked on, inspected or decided about the aircraft', {
  id: id('Identifier', 'How the record names this person', 'mila'),
  name: line('Name', 'Name as signed', 'Mila Okonski'),
  capacity: line('Capacity', 'In which capacity this person acts', 'Inspector'),
  authorisation: line('Authorisation', 'Licence or authorisation number', 'INSP-0417').optional(),
  scope: list('Scope', 'What the authorisation covers', choice('Scope', 'A kind of work', SCOPES), {
    max: SCOPES.length,
  }),
  validUntil: date('Valid until', 'Last day on which the authorisation holds', '2027-06-30').optional(),
});
export type Person = z.infer<typeof Person>;

export const People = list('People', 'Everybody whom the record names', Person, { min: 1, max: 100 });
