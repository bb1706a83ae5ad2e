import type * as z from 'zod';
import { EQUIPMENT_KIND_NAMES, TRAITS } from './equipment-kind.ts';
import { arm, choice, date, distance, flag, identifier, line, list, mass, part } from './field.ts';

const MASS_SOURCES = ['weighed', 'maker', 'estimated'] as const;

/** An item that goes back to its lender. */
export const OnLoan = part('onLoan', {
  from: line('onLoan_from', 'Stockwell Aero Parts', 80),
  until: date('onLoan_until', '2026-12-20').optional(),
});

/** Fields of every line of an equipment list. */
export const EquipmentFields = {
  name: line('equipmentFields_name', 'VHF radio', 80),
  equipmentKind: choice('equipmentFields_equipmentKind', EQUIPMENT_KIND_NAMES).optional(),
  traits: list('equipmentFields_traits', choice('equipmentFields_traits_each', TRAITS), {
    max: TRAITS.length,
  }).optional(),
  maker: line('equipmentFields_maker', 'Heron Avionics', 80).optional(),
  partNumber: line('equipmentFields_partNumber', 'HR-760-2', 60).optional(),
  serial: line('equipmentFields_serial', '30418', 60).optional(),
  version: line('equipmentFields_version', 'SW 2.14', 60).optional(),
  location: line('equipmentFields_location', 'Panel, centre stack', 80).optional(),
  mass: mass('equipmentFields_mass', 1.2),
  massLimit: mass('equipmentFields_massLimit', 0.05).optional(),
  massSource: choice('equipmentFields_massSource', MASS_SOURCES).optional(),
  arm: arm('equipmentFields_arm', 1620),
  lateralArm: distance('equipmentFields_lateralArm', 120).optional(),
  onLoan: OnLoan.optional(),
  required: flag('equipmentFields_required', true).optional(),
};

export const EquipmentItem = part('equipmentItem', {
  id: identifier(['equipment-item'], 'equipmentItem_id', 'E14'),
  ...EquipmentFields,
});
export type EquipmentItem = z.infer<typeof EquipmentItem>;
