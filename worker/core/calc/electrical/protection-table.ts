import type { Circuit } from '../../record/visit.ts';
import type { Gauge } from '../../record/wire-size.ts';
import type { Conductor } from './wire-table.ts';

type Row = Readonly<Partial<Record<Gauge, number>>>;

/**
 * AC 43.13-1B table 11-3, direct-current wire and circuit protector chart (read). The column of breakers has 11 figures
 * for 13 sizes: a second copy, which names the sizes down to 4 AWG, shows that the empty cells are the last two.
 */
const BREAKER_A: Row = {
  '22': 5,
  '20': 7.5,
  '18': 10,
  '16': 15,
  '14': 20,
  '12': 30,
  '10': 40,
  '8': 50,
  '6': 80,
  '4': 100,
  '2': 125,
};

const FUSE_A: Row = {
  '22': 5,
  '20': 5,
  '18': 10,
  '16': 10,
  '14': 15,
  '12': 20,
  '10': 30,
  '8': 50,
  '6': 70,
  '4': 70,
  '2': 100,
  '1': 150,
  '0': 150,
};

/**
 * Returns the max. rating of the protector of a wire. A limit stated in the record comes first. The chart is for copper
 * wire only, and has no breaker for 1 and 0 AWG.
 *
 * @returns amperes; undefined if neither the record nor the table has a rating
 * @source AC 43.13-1B table 11-3, read
 */
export function greatestProtectionA(
  { gauge, material = 'copper' }: Conductor,
  protection: NonNullable<Circuit['protection']>,
): { limitA: number; from: 'record' | 'table' } | undefined {
  if (protection.limitA !== undefined) return { limitA: protection.limitA, from: 'record' };
  if (material !== 'copper') return undefined;
  const limitA = (protection.kind === 'breaker' ? BREAKER_A : FUSE_A)[gauge];
  return limitA === undefined ? undefined : { limitA, from: 'table' };
}
