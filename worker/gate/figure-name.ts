import type { Limited } from '../calc/surveillance/limited.ts';
import { printNumber } from '../units/rounding.ts';

/**
 * A figure by name and, where there are several, by the place at which it was read.
 *
 * @example figureName({ name: 'Friction', at: { value: 5000, unit: 'ft' } })  // 'Friction at 5000 ft'
 */
export function figureName({ name, at }: Pick<Limited, 'name' | 'at'>): string {
  return at ? `${name} at ${printNumber(at.value, Number.isInteger(at.value) ? 0 : 1)} ${at.unit}` : name;
}
