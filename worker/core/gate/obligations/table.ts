import type { Obligation } from './obligation.ts';
import { AIRFRAME_OBLIGATIONS } from './table-airframe.ts';
import { AVIONICS_OBLIGATIONS } from './table-avionics.ts';
import { ELECTRICAL_OBLIGATIONS } from './table-electrical.ts';
import { POWER_OBLIGATIONS } from './table-power.ts';
import { WORK_OBLIGATIONS } from './table-work.ts';

/** What happened, and what must be shown afterwards. Lines add up: every line that fits an item counts. */
export const OBLIGATIONS: readonly Obligation[] = [
  ...AVIONICS_OBLIGATIONS,
  ...ELECTRICAL_OBLIGATIONS,
  ...AIRFRAME_OBLIGATIONS,
  ...POWER_OBLIGATIONS,
  ...WORK_OBLIGATIONS,
];
