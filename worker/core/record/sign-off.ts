import type * as z from 'zod';
import * as m from '../text/generated/messages.ts';
import { choice, line, list, part, person, timestamp } from './field.ts';
import { SCOPES } from './scopes.ts';

export const SignOff = part('signOff', {
  by: person('signOff_by', 'mila', m.signOff_signed, { scope: { field: 'kind' }, on: ['at'] }),
  at: timestamp('signOff_at', '2026-11-05T13:40:00+01:00', m.signOff_signing, {
    late: 'A person may sign after the end of work, before the release',
  }),
  work: line('signOff_work', 'Avionics work, M1 to M4'),
  kind: choice('signOff_kind', SCOPES).optional(),
});
export type SignOff = z.infer<typeof SignOff>;

/** Signatures of those who did the work, each for a part of it. */
export const SignOffs = list('signOffs', SignOff, { max: 60 });
