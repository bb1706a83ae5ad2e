import type { Limited } from '../calc/surveillance/limited.ts';
import type { Printer } from '../units/print.ts';

/**
 * A figure by name and, where there are several, by the place at which it was read.
 *
 * @example figureName({ name: 'Friction', at: { value: 5000, unit: 'ft' } }, say)  // 'Friction at 5000 ft'
 */
export function figureName({ name, at }: Pick<Limited, 'name' | 'at'>, say: Printer): string {
  return at
    ? say.words`${say.term(name)} at ${say.plain(at.value, Number.isInteger(at.value) ? 0 : 1)} ${at.unit}`
    : say.term(name);
}
