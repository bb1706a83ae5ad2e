import * as z from 'zod';
import { EquipmentItem as RecordedItem } from '../../record/equipment.ts';
import { Updated } from '../../record/modification.ts';
import type { EquipmentItem as Item } from '../../record/visit.ts';
import { orUndefined } from '../numbers/result-field.ts';
import { MassMoment, PlacedMass } from './mass-result.ts';

const { mass: _mass, massLimit: _massLimit, arm: _arm, lateralArm: _lateralArm, ...sameFields } = RecordedItem.shape;

/** A line of the equipment list, in calculation units. */
export const EquipmentItem = z.object({
  ...sameFields,
  massKg: z.number(),
  massLimitKg: z.number().optional(),
  armMm: z.number(),
  lateralArmMm: z.number().optional(),
} satisfies { [Field in keyof Item]-?: z.ZodType<Item[Field]> });

export const ChangeKind = z.enum(['removed', 'installed', 'relocated', 'updated', 'correction']);
export type ChangeKind = z.infer<typeof ChangeKind>;

/** A signed line of the equipment change: removals are negative. */
export const ChangeLine = PlacedMass.extend({
  kind: ChangeKind,
  /** Its modification; undefined for a record correction. */
  modification: orUndefined(z.string()),
  item: z.string(),
  /** Name from the list; undefined if the item is not on it. */
  name: orUndefined(z.string()),
  /** Standard uncertainty of the mass, zero if no limit is stated. */
  standardMassKg: z.number(),
  /** What an update changed in place; undefined for every other kind. */
  update: orUndefined(z.object({ what: Updated.shape.what, from: z.string(), to: z.string() })),
  /** The item is not on the list, so the line does not count. */
  unlisted: z.boolean(),
  pointer: z.string(),
});
export type ChangeLine = z.infer<typeof ChangeLine>;

/** The lines of an equipment change and their total. */
export const EquipmentChangeTotal = MassMoment.extend({ lines: z.array(ChangeLine) });
export type EquipmentChangeTotal = z.infer<typeof EquipmentChangeTotal>;
