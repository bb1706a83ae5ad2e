import type * as z from 'zod';
import * as m from '../text/generated/messages.ts';
import { choice, identifier, line, list, number, part, person, reference } from './field.ts';

export const Job = part('job', {
  id: identifier(['job'], 'job_id', 'W03'),
  text: line('job_text', 'Fit VHF radio and antenna'),
  state: choice('job_state', ['done', 'in-hand', 'waiting', 'declined'] as const),
  by: person('job_by', 'mila', m.worksheet_job).optional(),
  minutesLeft: number('job_minutesLeft', 'min', 0, { min: 0, max: 100_000 }).optional(),
  after: list('job_after', reference('job', 'job_after_each', 'W02'), {
    max: 30,
  }).optional(),
});

export const Worksheet = list('worksheet', Job, { max: 300 });
export type Worksheet = z.infer<typeof Worksheet>;
