import type { Aircraft } from './visit.ts';

/** Whether an engine or a motor drives an aircraft, by its data. */
export function isDriven({ engine, products = [] }: Pick<Aircraft, 'engine' | 'products'>): boolean {
  return engine !== undefined || products.some(({ kind }) => kind === 'engine' || kind === 'motor');
}
