import { line, part } from './field.ts';

/** Owner or operator, with the way to reach them. */
export const Party = part(
  'party',
  {
    name: line('party_name', 'Meadow Flying Group', 80),
    address: line('party_address', '3 Mill Lane, Lower Meadow').optional(),
    contact: line('party_contact', 'group@meadow.example').optional(),
  },
  'name',
);
