import * as z from 'zod';
import { PlacedMass } from '../mass/mass-result.ts';
import { orUndefined } from '../numbers/result-field.ts';

/** How the empty mass of another configuration is known. */
export const ConfigurationBasis = z.enum(['unchanged', 'changed', 'follows']);

/** A signed mass between two configurations: negative for what leaves. */
export const KitMass = PlacedMass.extend({ name: z.string() });
export type KitMass = z.infer<typeof KitMass>;

/** Empty condition of another configuration after the visit. */
export const ConfigurationEmpty = PlacedMass.extend({
  id: z.string(),
  name: z.string(),
  basis: ConfigurationBasis.describe(
    'as its own schedule says; changed: that schedule with the changes of this visit; follows: from another configuration',
  ),
  /** Its own schedule, if it has one. */
  reference: orUndefined(z.string()),
  date: orUndefined(z.string()),
  weighedOn: orUndefined(z.string()),
  /** Configuration that it follows from. */
  from: orUndefined(z.string()),
  kit: z.array(KitMass),
  macPercent: orUndefined(z.number()),
  lateralKgMm: orUndefined(z.number()),
});
export type ConfigurationEmpty = z.infer<typeof ConfigurationEmpty>;
