import type * as z from 'zod';
import { ARM_UNITS, MASS_UNITS, VOLUME_UNITS } from '../units/quantity.ts';
import { choice, part } from './field.ts';

export const UnitsPart = part('Units', 'The units of the whole record, declared once; the pack prints in them', {
  mass: choice('Mass unit', 'Unit of every mass', MASS_UNITS),
  arm: choice('Arm unit', 'Unit of every arm; moments are mass unit times arm unit', ARM_UNITS),
  volume: choice('Volume unit', 'Unit of every volume; densities are mass unit per volume unit', VOLUME_UNITS),
});
export type UnitsPart = z.infer<typeof UnitsPart>;
