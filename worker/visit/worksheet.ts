import type * as z from 'zod';
import { choice, id, line, list, number, part } from './field.ts';

export const Job = part('Job', 'A line of the worksheet', {
  id: id('Identifier', 'How the record names this job', 'W03'),
  text: line('Text', 'What was asked for', 'Fit VHF radio and antenna'),
  state: choice('State', 'How far it is', ['done', 'in-hand', 'waiting', 'declined'] as const),
  by: id('By', 'Person who does or did it', 'mila').optional(),
  minutesLeft: number('Minutes left', 'Estimate of what is left', 'min', 0, { min: 0, max: 100_000 }).optional(),
  after: list('After', 'Jobs that must be done first', id('Job', 'A job of this worksheet', 'W02'), {
    max: 30,
  }).optional(),
});

export const Worksheet = list('Worksheet', 'The jobs asked for', Job, { max: 300 });
export type Worksheet = z.infer<typeof Worksheet>;
