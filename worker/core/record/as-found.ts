import * as z from 'zod';
import { fieldText } from '../text/field-texts.ts';
import * as m from '../text/generated/messages.ts';
import { EquipmentFields } from './equipment.ts';
import { arm, choice, identifier, line, list, part, person, reference } from './field.ts';

const item = reference('equipment-item', 'item', 'E07', {
  code: 'AS_FOUND_ITEM_NOT_LISTED',
});
const disposition = line('disposition', 'Not aboard for years; struck off the list').optional();
const by = person('by', 'mila', m.asFound_surveyedAircraft).optional();

const Missing = part('missing', {
  kind: choice('missing_kind', ['missing'] as const),
  item,
  disposition,
  by,
});

const Unlisted = part('unlisted', {
  kind: choice('unlisted_kind', ['unlisted'] as const),
  id: identifier(['equipment-item'], 'unlisted_id', 'E31', {
    repeatable: 'INSTALLED_ITEM_ALREADY_LISTED says it, over list and changes together',
  }),
  ...EquipmentFields,
  disposition,
  by,
});

const DifferentSerial = part('differentSerial', {
  kind: choice('differentSerial_kind', ['different-serial'] as const),
  item,
  serial: line('differentSerial_serial', '30417', 60),
  disposition,
  by,
});

const DifferentMass = part(
  'differentMass',
  {
    kind: choice('differentMass_kind', ['different-mass'] as const),
    item,
    mass: EquipmentFields.mass,
    arm: arm('differentMass_arm', 1620, { of: m.item }),
    lateralArm: EquipmentFields.lateralArm,
    disposition,
    by,
  },
  'item',
);

const Difference = z
  .discriminatedUnion('kind', [Missing, Unlisted, DifferentSerial, DifferentMass])
  .meta({ ...fieldText('difference') });

/** Differences between the aircraft and its equipment list; each line becomes a record correction. */
export const AsFound = list('asFound', Difference, {
  max: 300,
});
export type AsFound = z.infer<typeof AsFound>;
