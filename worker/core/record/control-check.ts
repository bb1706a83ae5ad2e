import type * as z from 'zod';
import * as m from '../text/generated/messages.ts';
import { choice, flag, line, list, part, person, timestamp } from './field.ts';

export const AXES = [
  'ailerons',
  'elevator',
  'rudder',
  'trim',
  'flaps',
  'throttle',
  'weight-shift',
  'airbrake',
  'tow-release',
  'dump-valve',
  'collective',
  'cyclic',
  'pedals',
  'rotor-brake',
  'pre-rotator',
  'canopy-steering',
  'propeller-pitch',
  'mixture',
  'carburettor-heat',
  'steering',
  'wheel-brake',
  'landing-gear',
  'water-rudder',
  'other',
] as const;
export type ControlAxis = (typeof AXES)[number];

/**
 * What a surface did: the ailerons at stick or wheel to the left, the elevator at stick back, the rudder at left pedal
 * forward. The first of each pair is the correct sense.
 */
export const MOVEMENTS = {
  ailerons: ['left-aileron-up', 'left-aileron-down'],
  elevator: ['elevator-up', 'elevator-down'],
  rudder: ['rudder-left', 'rudder-right'],
} as const;
export type Movement = (typeof MOVEMENTS)[keyof typeof MOVEMENTS][number];

export const Disturbance = part(
  'disturbance',
  {
    axis: choice('disturbance_axis', AXES),
    control: line('controlCheck_control', 'Cowl flap lever', 60).optional(),
    what: line('disturbance_what', 'Push rod undone to pass the new loom'),
    at: timestamp('disturbance_at', '2026-11-04T17:00:00+01:00', m.controlCheck_reassembly),
  },
  'axis',
);

export const ControlCheck = part(
  'controlCheck',
  {
    axis: choice('controlCheck_axis', AXES),
    at: timestamp('controlCheck_at', '2026-11-05T13:40:00+01:00', m.controlCheck_proof),
    by: person('controlCheck_by', 'mila', m.controlCheck_proved),
    secondBy: person('controlCheck_secondBy', 'jonas', m.controlCheck_watched).optional(),
    input: line('controlCheck_input', 'Stick left', 60),
    response: line('controlCheck_response', 'Left aileron up, right aileron down', 100),
    movement: choice('controlCheck_movement', [
      ...MOVEMENTS.ailerons,
      ...MOVEMENTS.elevator,
      ...MOVEMENTS.rudder,
    ] as const).optional(),
    isDirectionRight: flag('controlCheck_isDirectionRight', true),
    isFullAndFree: flag('controlCheck_isFullAndFree', true),
    control: line('controlCheck_control', 'Cowl flap lever', 60).optional(),
    travel: line('controlCheck_travel', '22° up, 15° down; 20 to 24, 14 to 17', 100).optional(),
  },
  'axis',
);
export type ControlCheck = z.infer<typeof ControlCheck>;

export const Controls = part('controls', {
  disturbed: list('controls_disturbed', Disturbance, { max: 60 }).optional(),
  checks: list('controls_checks', ControlCheck, { max: 60 }),
});
export type Controls = z.infer<typeof Controls>;
