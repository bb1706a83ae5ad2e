import { choice, line, part } from './field.ts';

/** Products other than engine and propeller that have a separate log book or card. */
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

/** A product with a separate log book or card. */
export const Product = part('product', { kind: choice('product_kind', PRODUCTS), ...ProductFields });
