import { choice, line, part } from './field.ts';

/** Products beside engine and propeller that have a log book or a card of their own. */
export const PRODUCTS = [
  'engine',
  'motor',
  'propeller',
  'rotor',
  'rotor-head',
  'tail-rotor',
  'gearbox',
  'wing',
  'canopy',
  'battery',
  'rescue-system',
  'floats',
] as const;
export type ProductKind = (typeof PRODUCTS)[number];

export const ProductFields = {
  maker: line('product_maker', 'Tarn Motors'),
  model: line('product_model', 'T4-90'),
  serial: line('product_serial', 'T4-2217', 60),
};

/** A product with a log book or a card of its own. */
export const Product = part('product', { kind: choice('product_kind', PRODUCTS), ...ProductFields });
