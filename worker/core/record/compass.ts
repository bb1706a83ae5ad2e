import type * as z from 'zod';
import type { FieldText } from '../text/field-texts.ts';
import * as m from '../text/generated/messages.ts';
import { choice, flag, line, list, number, part, person, timestamp } from './field.ts';

const heading = (text: FieldText, example: number) => number(text, '°', example, { min: 0, max: 360 });

export const Reading = part('reading', {
  headingDeg: heading('reading_headingDeg', 30),
  compassDeg: heading('reading_compassDeg', 31),
});

export const Swing = part('swing', {
  state: choice('swing_state', ['equipment-off', 'equipment-on'] as const),
  readings: list('swing_readings', Reading, { min: 1, max: 72 }),
});

export const CompassLoad = part('compassLoad', {
  name: line('compassLoad_name', 'Landing light', 60),
  headingDeg: heading('compassLoad_headingDeg', 90),
  offDeg: heading('compassLoad_offDeg', 91),
  onDeg: heading('compassLoad_onDeg', 92),
});

export const Position = part('position', {
  latitudeDeg: number('position_latitudeDeg', '°', 48.1, { min: -90, max: 90 }),
  longitudeDeg: number('position_longitudeDeg', '°', 16.6, { min: -180, max: 180 }),
  elevationM: number('position_elevationM', 'm', 180, { min: -500, max: 10_000 }).optional(),
});

export const DirectionIndicator = part('directionIndicator', {
  driftDegPer15Min: number('directionIndicator_driftDegPer15Min', '° in 15 min', 3, { min: -90, max: 90 }),
  limitDegPer15Min: number('directionIndicator_limitDegPer15Min', '° in 15 min', 4, {
    min: 0,
    max: 90,
  }).optional(),
});

export const Compass = part('compass', {
  serial: line('compass_serial', 'C-0931', 60).optional(),
  place: line('compass_place', 'Compass base, taxiway C'),
  method: choice('compass_method', ['surveyed-base', 'datum-compass', 'satellite-track'] as const),
  reference: choice('compass_reference', ['magnetic', 'true'] as const),
  position: Position.optional(),
  swungAt: timestamp('compass_swungAt', '2026-11-05T11:05:00+01:00', m.compass_compassSwing),
  by: person('compass_by', 'mila', m.compass_swungCompass),
  engineRunning: flag('compass_engineRunning', true),
  level: flag('compass_level', true),
  swings: list('compass_swings', Swing, { min: 1, max: 4 }),
  loads: list('compass_loads', CompassLoad, { max: 30 }).optional(),
  correctors: line('compass_correctors', 'B corrector 2° on east, then checked').optional(),
  directionIndicator: DirectionIndicator.optional(),
});
export type Compass = z.infer<typeof Compass>;
