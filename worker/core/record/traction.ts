import type * as z from 'zod';
import * as m from '../text/generated/messages.ts';
import { flag, line, number, part, person, timestamp } from './field.ts';

const megohms = (text: 'tractionInsulation_resistanceMohm' | 'tractionInsulation_limitMohm', example: number) =>
  number(text, 'MΩ', example, { min: 0, max: 1_000_000 });

export const TractionInsulation = part('tractionInsulation', {
  resistanceMohm: megohms('tractionInsulation_resistanceMohm', 12),
  limitMohm: megohms('tractionInsulation_limitMohm', 0.5),
  testV: number('tractionInsulation_testV', 'V', 500, { min: 1, max: 5000 }),
  instrument: line('tractionInsulation_instrument', 'Insulation tester IT-5, serial 0442', 80).optional(),
  by: person('tractionInsulation_by', 'tomas', m.traction_testedInsulation),
  at: timestamp('tractionInsulation_at', '2026-11-04T09:20:00+01:00', m.traction_insulationTest, {
    after: ['isolation.at'],
  }),
});

export const TractionIsolation = part('tractionIsolation', {
  by: person('tractionIsolation_by', 'tomas', m.traction_provedIsolation),
  secondBy: person('tractionIsolation_secondBy', 'mila', m.traction_watchedIsolation).optional(),
  at: timestamp('tractionIsolation_at', '2026-11-04T09:10:00+01:00', m.traction_isolation),
});

export const TractionDisconnect = part('tractionDisconnect', {
  isOpened: flag('tractionDisconnect_isOpened', true),
  by: person('tractionDisconnect_by', 'mila', m.traction_triedDisconnect),
  at: timestamp('tractionDisconnect_at', '2026-11-05T12:30:00+01:00', m.traction_disconnectTrial),
});

/**
 * Circuit of the electric drive, apart from the 14 or 28 V system. From 60 V on direct current is dangerous to touch: common
 * practice, no source. Upper bounds are our choice, against mistyped figures.
 */
export const Traction = part('traction', {
  nominalV: number('traction_nominalV', 'V', 320, { min: 60, max: 2000 }),
  isolation: TractionIsolation.optional(),
  insulation: TractionInsulation.optional(),
  disconnect: TractionDisconnect.optional(),
});
export type Traction = z.infer<typeof Traction>;
