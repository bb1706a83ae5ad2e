import type * as z from 'zod';
import { ARM_UNITS, MASS_UNITS, VOLUME_UNITS } from '../units/quantity.ts';
import { choice, part } from './field.ts';

export const UnitsPart = part('unitsPart', {
  mass: choice('unitsPart_mass', MASS_UNITS),
  arm: choice('unitsPart_arm', ARM_UNITS),
  volume: choice('unitsPart_volume', VOLUME_UNITS),
});
export type UnitsPart = z.infer<typeof UnitsPart>;
