import type * as z from 'zod';
import * as m from '../text/generated/messages.ts';
import { choice, identifier, line, list, number, part, person, reference } from './field.ts';

export const Job = part('Job', 'A line of the worksheet', {
  id: identifier(['job'], 'Identifier', 'How the record names this job', 'W03'),
  text: line('Text', 'What was asked for', 'Fit VHF radio and antenna'),
  state: choice('State', 'How far it is', ['done', 'in-hand', 'waiting', 'declined'] as const),
  by: person('By', 'Person who does or did it', 'mila', m.worksheet_job).optional(),
  minutesLeft: number('Minutes left', 'Estimate of what is left', 'min', 0, { min: 0, max: 100_000 }).optional(),
  after: list('After', 'Jobs that must be done first', reference('job', 'Job', 'A job of this worksheet', 'W02'), {
    max: 30,
  }).optional(),
});

export const Worksheet = list('Worksheet', 'The jobs asked for', Job, { max: 300 });
export type Worksheet = z.infer<typeof Worksheet>;
