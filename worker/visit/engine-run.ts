import type * as z from 'zod';
import * as m from '../text/generated/messages.ts';
import { choice, flag, line, list, number, part, person, timestamp } from './field.ts';

export const RunValue = part('Value', 'One instrument reading of a run', {
  name: line('Name', 'What was read; the same name before and after', 'Oil temperature', 60),
  unit: line('Unit', 'Unit as on the instrument', '°C', 20),
  value: number('Value', 'Reading', 'as stated', 82),
  resolution: number('Resolution', 'Smallest step that can be read', 'as stated', 2, { min: 0 }).optional(),
  least: number('Least', 'Least value allowed', 'as stated', 50).optional(),
  most: number('Most', 'Greatest value allowed', 'as stated', 130).optional(),
});

export const EngineRun = part(
  'Engine run',
  'A run of the engine on the ground',
  {
    when: choice('When', 'Before the aircraft was touched or after all work', ['before', 'after'] as const),
    at: timestamp('At', 'When it ended', '2026-11-05T13:28:00+01:00', {
      before: m.engineRun_engineRunBeforeWork,
      after: m.engineRun_engineRunAfterWork,
    }),
    by: person('By', 'Person at the controls', 'mila', m.engineRun_ranEngine),
    restraint: line('Restraint', 'How the aircraft was held', 'Chocks and tail tied to the ring').optional(),
    heldBy: person('Held by', 'Person who watched outside', 'tomas', m.engineRun_watchedRunEngine).optional(),
    airTemperatureC: number('Air temperature', 'Outside air temperature', '°C', 9, { min: -60, max: 60 }).optional(),
    pressureHpa: number('Pressure', 'Pressure at the aerodrome', 'hPa', 1012, { min: 500, max: 1100 }).optional(),
    values: list('Values', 'Readings', RunValue, { min: 1, max: 60 }),
    leaksLookedFor: flag('Leaks looked for', 'Looked for leaks by torch after stopping', true).optional(),
  },
  'when',
);
export type EngineRun = z.infer<typeof EngineRun>;

export const EngineRuns = list('Engine runs', 'Runs before and after the work', EngineRun, { max: 10 });
