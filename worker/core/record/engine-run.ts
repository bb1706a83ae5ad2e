import type * as z from 'zod';
import * as m from '../text/generated/messages.ts';
import { choice, flag, line, list, number, part, person, timestamp } from './field.ts';

export const RunValue = part('runValue', {
  name: line('runValue_name', 'Oil temperature', 60),
  unit: line('runValue_unit', '°C', 20),
  value: number('runValue_value', 'as stated', 82),
  resolution: number('runValue_resolution', 'as stated', 2, { min: 0 }).optional(),
  least: number('runValue_least', 'as stated', 50).optional(),
  most: number('runValue_most', 'as stated', 130).optional(),
});

export const EngineRun = part(
  'engineRun',
  {
    when: choice('engineRun_when', ['before', 'after'] as const),
    at: timestamp('engineRun_at', '2026-11-05T13:28:00+01:00', {
      before: m.engineRun_engineRunBeforeWork,
      after: m.engineRun_engineRunAfterWork,
    }),
    by: person('engineRun_by', 'mila', m.engineRun_ranEngine),
    restraint: line('engineRun_restraint', 'Chocks and tail tied to the ring').optional(),
    heldBy: person('engineRun_heldBy', 'tomas', m.engineRun_watchedRunEngine).optional(),
    airTemperatureC: number('engineRun_airTemperatureC', '°C', 9, { min: -60, max: 60 }).optional(),
    pressureHpa: number('engineRun_pressureHpa', 'hPa', 1012, { min: 500, max: 1100 }).optional(),
    values: list('engineRun_values', RunValue, { min: 1, max: 60 }),
    leaksLookedFor: flag('engineRun_leaksLookedFor', true).optional(),
  },
  'when',
);
export type EngineRun = z.infer<typeof EngineRun>;

export const EngineRuns = list('engineRuns', EngineRun, { max: 10 });
