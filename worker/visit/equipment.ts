import type * as z from 'zod';
import { arm, choice, flag, identifier, line, mass, part } from './field.ts';

export const MASS_SOURCES = ['weighed', 'maker', 'estimated'] as const;

/** What every line of an equipment list says of an item. */
export const EquipmentFields = {
  name: line('Name', 'What the item is', 'VHF radio', 80),
  maker: line('Maker', 'Maker of the item', 'Heron Avionics', 80).optional(),
  partNumber: line('Part number', 'Maker’s part number', 'HR-760-2', 60).optional(),
  serial: line('Serial number', 'Serial number as read on the item', '30418', 60).optional(),
  version: line('Version', 'Hardware, software or database version', 'SW 2.14', 60).optional(),
  location: line('Location', 'Where it sits in the aircraft', 'Panel, centre stack', 80).optional(),
  mass: mass('Mass', 'Mass of the item as installed, with its tray and hardware', 1.2),
  massLimit: mass('Mass limit', 'Limit of error of the mass, plus or minus', 0.05).optional(),
  massSource: choice('Mass source', 'Where the mass comes from', MASS_SOURCES).optional(),
  arm: arm('Arm', 'Arm of the item as installed', 1620),
  required: flag('Required', 'Whether the aircraft may not fly without it', true).optional(),
};

export const EquipmentItem = part('Equipment item', 'A line of the equipment list', {
  id: identifier(['equipment-item'], 'Identifier', 'Number of the line; it stays with the item for good', 'E14'),
  ...EquipmentFields,
});
export type EquipmentItem = z.infer<typeof EquipmentItem>;
