import type { Rule } from './rule.ts';
import { AGREEMENT_RULES } from './rules/agreement/index.ts';
import { ANTENNA_RULES } from './rules/antennas/index.ts';
import { ATTACHMENT_RULES } from './rules/attachments/index.ts';
import { CARRIED_RULES } from './rules/carried/index.ts';
import { COMPASS_RULES } from './rules/compass/index.ts';
import { DUE_RULES } from './rules/due/index.ts';
import { ELECTRICAL_RULES } from './rules/electrical/index.ts';
import { ENGINE_AND_CONTROLS_RULES } from './rules/engine-and-controls/index.ts';
import { EQUIPMENT_RULES } from './rules/equipment/index.ts';
import { INSPECTION_RULES } from './rules/inspection/index.ts';
import { LOADING_RULES } from './rules/loading/index.ts';
import { OBLIGATION_RULES } from './rules/obligations/index.ts';
import { PEOPLE_AND_DATES_RULES } from './rules/people-and-dates/index.ts';
import { RELEASE_RULES } from './rules/release/index.ts';
import { SURVEILLANCE_RULES } from './rules/surveillance/index.ts';
import { WEIGHING_RULES } from './rules/weighing/index.ts';
import { WIRING_RULES } from './rules/wiring/index.ts';

/** Every rule of the release check, in the order of the findings. */
export const RULES: readonly Rule[] = [
  ...PEOPLE_AND_DATES_RULES,
  ...EQUIPMENT_RULES,
  ...AGREEMENT_RULES,
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
  ...OBLIGATION_RULES,
  ...ATTACHMENT_RULES,
  ...RELEASE_RULES,
];
