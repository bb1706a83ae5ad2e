import type { ProductKind } from '../../record/product.ts';
import type { Visit } from '../../record/visit.ts';
import type { Applies } from './due-result.ts';

export type { Applies } from './due-result.ts';

export type BulletinsRecord = NonNullable<Visit['bulletins']>;
export type Bulletin = BulletinsRecord['items'][number];

/** A serial number as letters and a number, so that D2-0117 sorts between D2-0050 and D2-0140. */
interface SerialParts {
  letters: string;
  number: number;
}

function serialParts(serial: string): SerialParts | undefined {
  const parts = /^(.*?)(\d+)\s*$/.exec(serial.toUpperCase().replace(/\s+/g, ''));
  return parts ? { letters: parts[1] ?? '', number: Number(parts[2]) } : undefined;
}

/**
 * Whether a serial number lies in a range, both ends included.
 *
 * @returns undefined if it cannot be compared: no number, other letters, or a reversed range
 */
export function isInSerialRange(serial: string, range: { from: string; to: string }): boolean | undefined {
  const [own, from, to] = [serialParts(serial), serialParts(range.from), serialParts(range.to)];
  if (!own || !from || !to || own.letters !== from.letters || from.letters !== to.letters) return undefined;
  if (from.number > to.number) return undefined;
  return own.number >= from.number && own.number <= to.number;
}

/** Decides the applicability of a bulletin from the record of the aircraft and its equipment. */
export function applicabilityOf(
  visit: Pick<Visit, 'aircraft'>,
  equipment: readonly { partNumber?: string | undefined; serial?: string | undefined }[],
  bulletin: Bulletin,
): Applies {
  const { product, serials, partNumbers } = bulletin.applicability;
  if (product !== 'equipment') return serialApplies(serialOf(visit, product), serials);
  if (!partNumbers?.length) return 'undecided';
  const concerned = equipment.filter(({ partNumber }) => partNumber && partNumbers.includes(partNumber));
  if (concerned.length === 0) return 'does-not-apply';
  const verdicts = concerned.map(({ serial }) => serialApplies(serial, serials));
  if (verdicts.includes('applies')) return 'applies';
  return verdicts.includes('undecided') ? 'undecided' : 'does-not-apply';
}

function serialOf({ aircraft }: Pick<Visit, 'aircraft'>, product: 'airframe' | ProductKind): string | undefined {
  if (product === 'airframe') return aircraft.serial;
  const own = product === 'engine' || product === 'propeller' ? aircraft[product]?.serial : undefined;
  return own ?? aircraft.products?.find(({ kind }) => kind === product)?.serial;
}

function serialApplies(serial: string | undefined, ranges: Bulletin['applicability']['serials']): Applies {
  if (!ranges?.length) return 'applies';
  if (serial === undefined) return 'undecided';
  const verdicts = ranges.map((range) => isInSerialRange(serial, range));
  if (verdicts.includes(true)) return 'applies';
  // One range with the letters of this serial number shows the manufacturer's notation; ranges of other letters are
  // other series.
  return verdicts.includes(false) ? 'does-not-apply' : 'undecided';
}
