import type { Phase } from '../visit/electrical.ts';

/** The phases of a load analysis in words. */
export const PHASE_NAMES: Readonly<Record<Phase, string>> = {
  start: 'Start',
  taxi: 'Taxi',
  takeOff: 'Take-off',
  cruise: 'Cruise',
  landing: 'Landing',
  sourceFailed: 'Source failed',
};
