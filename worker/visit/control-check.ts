import type * as z from 'zod';
import * as m from '../text/generated/messages.ts';
import { choice, flag, line, list, part, person, timestamp } from './field.ts';

export const AXES = ['ailerons', 'elevator', 'rudder', 'trim', 'flaps', 'throttle', 'weight-shift'] as const;

export const Disturbance = part(
  'Disturbance',
  'Something disconnected or opened near a control, also when only for access',
  {
    axis: choice('Axis', 'Control that it touches', AXES),
    what: line('What', 'What was disturbed', 'Push rod undone to pass the new loom'),
    at: timestamp('Closed', 'When it was put back', '2026-11-04T17:00:00+01:00', m.controlCheck_reassembly),
  },
  'axis',
);

export const ControlCheck = part(
  'Control check',
  'A control proved by direction, not only by movement',
  {
    axis: choice('Axis', 'Control', AXES),
    at: timestamp('At', 'When', '2026-11-05T13:40:00+01:00', m.controlCheck_proof),
    by: person('By', 'Person in the seat', 'mila', m.controlCheck_proved),
    secondBy: person('Second person', 'Person who watched the surface', 'jonas', m.controlCheck_watched).optional(),
    input: line('Input', 'What the hand or foot did', 'Stick left', 60),
    response: line('Response', 'What the surface did', 'Left aileron up, right aileron down', 100),
    isDirectionRight: flag('Direction right', 'The surface moved the way it must', true),
    isFullAndFree: flag('Full and free', 'Full travel, nothing binds', true),
    travel: line('Travel', 'Measured travel with its limits', '22° up, 15° down; 20 to 24, 14 to 17', 100).optional(),
  },
  'axis',
);
export type ControlCheck = z.infer<typeof ControlCheck>;

export const Controls = part('Controls', 'What was disturbed near the controls, and how they were proved', {
  disturbed: list('Disturbed', 'Everything disconnected, also only for access', Disturbance, { max: 60 }).optional(),
  checks: list('Checks', 'Every control', ControlCheck, { max: 60 }),
});
export type Controls = z.infer<typeof Controls>;
