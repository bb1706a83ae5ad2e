import type * as z from 'zod';
import * as m from '../text/generated/messages.ts';
import { choice, flag, line, list, number, part, person, timestamp } from './field.ts';

const heading = (title: string, description: string, example: number) =>
  number(title, description, '°', example, { min: 0, max: 360 });

export const Reading = part('Reading', 'The compass on one heading', {
  headingDeg: heading('Heading', 'Heading of the aircraft by the reference', 30),
  compassDeg: heading('Compass', 'What the compass shows', 31),
});

export const Swing = part('Swing', 'One turn round the headings in one electrical state', {
  state: choice('State', 'Electrical state', ['equipment-off', 'equipment-on'] as const),
  readings: list('Readings', 'Every heading, in any order', Reading, { min: 1, max: 72 }),
});

export const CompassLoad = part('Load', 'Equipment switched on and off on one heading', {
  name: line('Name', 'Which equipment', 'Landing light', 60),
  headingDeg: heading('Heading', 'Heading on which it was switched', 90),
  offDeg: heading('Off', 'Compass with it off', 91),
  onDeg: heading('On', 'Compass with it on', 92),
});

export const Position = part('Position', 'Where on the Earth, for magnetic variation', {
  latitudeDeg: number('Latitude', 'North positive', '°', 48.1, { min: -90, max: 90 }),
  longitudeDeg: number('Longitude', 'East positive', '°', 16.6, { min: -180, max: 180 }),
  elevationM: number('Elevation', 'Height above the ellipsoid', 'm', 180, { min: -500, max: 10_000 }).optional(),
});

export const DirectionIndicator = part(
  'Direction indicator',
  'The gyroscopic direction indicator checked on the swing',
  {
    driftDegPer15Min: number(
      'Drift',
      'Drift in a quarter of an hour, corrected for the turn of the Earth',
      '° in 15 min',
      3,
      { min: -90, max: 90 },
    ),
    limitDegPer15Min: number('Limit', 'Greatest drift allowed by its maker', '° in 15 min', 4, {
      min: 0,
      max: 90,
    }).optional(),
  },
);

export const Compass = part('Compass', 'The compass swing', {
  serial: line('Serial number', 'Serial number of the compass', 'C-0931', 60).optional(),
  place: line('Place', 'Where it was swung', 'Compass base, taxiway C'),
  method: choice('Method', 'What gave the headings', ['surveyed-base', 'datum-compass', 'satellite-track'] as const),
  reference: choice('Reference', 'Whether the headings are magnetic or true', ['magnetic', 'true'] as const),
  position: Position.optional(),
  swungAt: timestamp('Swung', 'When the last reading was taken', '2026-11-05T11:05:00+01:00', m.compass_compassSwing),
  by: person('By', 'Person who swung it', 'mila', m.compass_swungCompass),
  engineRunning: flag('Engine running', 'Whether the engine ran', true),
  level: flag('Level', 'Whether the aircraft stood in the attitude of level flight', true),
  swings: list('Swings', 'One for each electrical state', Swing, { min: 1, max: 4 }),
  loads: list('Loads', 'Equipment tried one by one', CompassLoad, { max: 30 }).optional(),
  correctors: line('Correctors', 'What was adjusted', 'B corrector 2° on east, then checked').optional(),
  directionIndicator: DirectionIndicator.optional(),
});
export type Compass = z.infer<typeof Compass>;
