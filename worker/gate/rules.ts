import type { Rule } from './rule.ts';
import { ANTENNA_RULES } from './rule-lists/antennas.ts';
import { ATTACHMENT_RULES } from './rule-lists/attachments.ts';
import { CARRIED_RULES } from './rule-lists/carried.ts';
import { COMPASS_RULES } from './rule-lists/compass.ts';
import { DUE_RULES } from './rule-lists/due.ts';
import { ELECTRICAL_RULES } from './rule-lists/electrical.ts';
import { ENGINE_AND_CONTROLS_RULES } from './rule-lists/engine-and-controls.ts';
import { EQUIPMENT_RULES } from './rule-lists/equipment.ts';
import { INSPECTION_RULES } from './rule-lists/inspection.ts';
import { LOADING_RULES } from './rule-lists/loading.ts';
import { PEOPLE_AND_DATES_RULES } from './rule-lists/people-and-dates.ts';
import { RELEASE_RULES } from './rule-lists/release.ts';
import { SURVEILLANCE_RULES } from './rule-lists/surveillance.ts';
import { WEIGHING_RULES } from './rule-lists/weighing.ts';
import { WIRING_RULES } from './rule-lists/wiring.ts';

/** Every rule of the gate, in the order in which findings are listed. */
export const RULES: readonly Rule[] = [
  ...PEOPLE_AND_DATES_RULES,
  ...EQUIPMENT_RULES,
  ...WEIGHING_RULES,
  ...LOADING_RULES,
  ...INSPECTION_RULES,
  ...ELECTRICAL_RULES,
  ...WIRING_RULES,
  ...ANTENNA_RULES,
  ...SURVEILLANCE_RULES,
  ...COMPASS_RULES,
  ...ENGINE_AND_CONTROLS_RULES,
  ...DUE_RULES,
  ...CARRIED_RULES,
  ...ATTACHMENT_RULES,
  ...RELEASE_RULES,
];
