import type * as z from 'zod';
import * as m from '../text/generated/messages.ts';
import { choice, date, identifier, line, list, part, person } from './field.ts';
import { SCOPES } from './scopes.ts';

export const Person = part('person', {
  id: identifier(['person'], 'person_id', 'mila'),
  name: line('person_name', 'Mila Okonski'),
  capacity: line('person_capacity', 'Inspector'),
  authorisation: line('person_authorisation', 'INSP-0417').optional(),
  scope: list('person_scope', choice('person_scope_each', SCOPES), {
    max: SCOPES.length,
  }),
  validUntil: date('person_validUntil', '2027-06-30').optional(),
  supervisor: person('person_supervisor', 'mila', m.person_supervises).optional(),
});
export type Person = z.infer<typeof Person>;

export const People = list('people', Person, { min: 1, max: 100 });
