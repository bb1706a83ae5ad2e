import { dragLb } from '../../worker/core/calc/antennas/drag.ts';
import { quarterWaveMm, wavelengthMm } from '../../worker/core/calc/antennas/wavelength.ts';

/** Topics of the antennas, in inches and pounds where the source has them. */
export const ANTENNA_TOPICS = {
  'wavelength-inches': ({ frequencyMhz }: { frequencyMhz: number }) => ({
    wavelengthIn: wavelengthMm(frequencyMhz) / 25.4,
    quarterIn: quarterWaveMm(frequencyMhz) / 25.4,
  }),

  'quarter-wave': ({ frequencyMhz }: { frequencyMhz: number }) => ({ quarterMm: quarterWaveMm(frequencyMhz) }),

  'antenna-drag': ({ areaFt2, speedMph }: { areaFt2: number; speedMph: number }) => ({
    dragLb: dragLb(areaFt2, speedMph),
  }),
};
