import type { AircraftClass, UNDERCARRIAGES } from '../../../record/class.ts';
import type { EquipmentKind } from '../../../record/equipment-kind.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { termOf } from '../../../text/terms.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

type Undercarriage = (typeof UNDERCARRIAGES)[number];

const ON_WATER_OR_SNOW = ['floats', 'amphibian', 'skis'] as const;
const WHEELS = ['nose-wheel', 'tail-wheel'] as const;

/** Undercarriages that aircraft of a class have. */
const OF_CLASS: Readonly<Record<AircraftClass, readonly Undercarriage[]>> = {
  'three-axis': [...WHEELS, 'single-wheel', ...ON_WATER_OR_SNOW],
  'weight-shift': ['nose-wheel', ...ON_WATER_OR_SNOW, 'hung'],
  'powered-parachute': ['nose-wheel', ...ON_WATER_OR_SNOW, 'hung'],
  glider: [...WHEELS, 'single-wheel', 'skids'],
  'self-launching-glider': [...WHEELS, 'single-wheel'],
  gyroplane: [...WHEELS, 'floats', 'skis'],
  helicopter: [...WHEELS, 'skids', 'floats'],
};

/** Item that the list has with this undercarriage. */
const STANDS_ON: Partial<Record<Undercarriage, EquipmentKind>> = { floats: 'float', amphibian: 'float', skis: 'ski' };

export const undercarriageNotOfClass: Rule = {
  code: 'UNDERCARRIAGE_NOT_OF_CLASS',
  severity: 'caution',
  meaning: 'Aircraft of this class do not have this undercarriage, or no float or ski is listed',
  remedy: m.undercarriageNotOfClass_remedy,
  source: PRACTICE,
  check: ({ visit: { aircraft }, results }) => {
    const { undercarriage } = aircraft;
    if (undercarriage === undefined || aircraft.class === 'unstated') return undefined;
    const path = ['aircraft', 'undercarriage'];
    const values = { undercarriage: termOf(undercarriage), class: termOf(aircraft.class) };
    const data = { undercarriage, class: aircraft.class };
    if (!OF_CLASS[aircraft.class].includes(undercarriage))
      return { path, sentence: said(m.undercarriageNotOfClass_class, values), data };
    const item = STANDS_ON[undercarriage];
    if (!item || results.change.after.some(({ equipmentKind }) => equipmentKind === item)) return undefined;
    return { path, sentence: said(m.undercarriageNotOfClass_noItem, values), data };
  },
};
