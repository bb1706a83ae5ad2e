import * as z from 'zod';
import * as m from '../text/generated/messages.ts';
import { EquipmentFields } from './equipment.ts';
import { arm, choice, identifier, line, list, part, person, reference } from './field.ts';

const item = reference('equipment-item', 'Item', 'Line of the baseline equipment list', 'E07', {
  code: 'AS_FOUND_ITEM_NOT_LISTED',
});
const disposition = line(
  'Disposition',
  'What was decided about it',
  'Not aboard for years; struck off the list',
).optional();
const by = person('Found by', 'Person who found it', 'mila', m.asFound_surveyedAircraft).optional();

const Missing = part('Listed but missing', 'The list names it, the aircraft does not have it', {
  kind: choice('Kind', 'What differs', ['missing'] as const),
  item,
  disposition,
  by,
});

const Unlisted = part('Present but unlisted', 'The aircraft has it, the list does not', {
  kind: choice('Kind', 'What differs', ['unlisted'] as const),
  id: identifier(['equipment-item'], 'Identifier', 'Line number that the item gets', 'E31', {
    repeatable: 'INSTALLED_ITEM_ALREADY_LISTED says it, over list and changes together',
  }),
  ...EquipmentFields,
  disposition,
  by,
});

const DifferentSerial = part('Different serial', 'The serial number read is not the one listed', {
  kind: choice('Kind', 'What differs', ['different-serial'] as const),
  item,
  serial: line('Serial read', 'Serial number read on the item', '30417', 60),
  disposition,
  by,
});

const DifferentMass = part(
  'Different mass or arm',
  'The mass or arm found is not the one listed',
  {
    kind: choice('Kind', 'What differs', ['different-mass'] as const),
    item,
    mass: EquipmentFields.mass,
    arm: arm('Arm', 'Arm of the item as installed', 1620, { of: m.item }),
    disposition,
    by,
  },
  'item',
);

const Difference = z
  .discriminatedUnion('kind', [Missing, Unlisted, DifferentSerial, DifferentMass])
  .meta({ title: 'Difference', description: 'One way in which the aircraft differs from its papers' });

/** The survey of the aircraft against its equipment list; each line becomes a record correction. */
export const AsFound = list('As found', 'Where the aircraft was found to differ from its papers', Difference, {
  max: 300,
});
export type AsFound = z.infer<typeof AsFound>;
