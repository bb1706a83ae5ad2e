import type * as z from 'zod';
import { choice, date, identifier, line, list, part } from './field.ts';
import { SCOPES } from './scopes.ts';

export const Person = part('Person', 'Somebody who worked on, inspected or decided about the aircraft', {
  id: identifier(['person'], 'Identifier', 'How the record names this person', 'mila'),
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
