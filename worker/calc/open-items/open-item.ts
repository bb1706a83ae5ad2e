import type { Visit } from '../../visit/visit.ts';
import { isAtMost } from '../limit-met.ts';

type Product = NonNullable<Visit['meters']>['readings'][number]['of'];

/** On which clocks, and when on each. Hours are total hours of the product that the meter counts. */
export interface OpenLimit {
  date?: string;
  hours?: number;
  landings?: number;
}

/** Something that stands open when a pack is released, and has to be answered for at a later visit. Plain data: it is kept as JSON. */
export interface OpenItem {
  /**
   * Its name for the life of the aircraft: the pack number in which it first stood, and its identifier there, `Q-SLM-P1/F4`. Left out
   * while that pack has no number.
   */
  item?: string;
  /** How the record names it in which it stands. */
  id: string;
  kind: 'deferral' | 'watch' | 'due' | 'bulletin' | 'limitation' | 'test';
  /** Why it comes due, for what comes again. */
  basis?: 'directive' | 'life-limit' | 'programme' | 'recommendation' | 'owner' | 'bulletin';
  /** What it is, in the words of the record. */
  text: string;
  until: OpenLimit;
  /** What its hours count, and the meter by its identifier where the record names one. */
  of: Product;
  meter?: string;
  /** When it was done last, for what comes again. */
  done?: OpenLimit;
  toleranceHours?: number;
  toleranceMonths?: number;
}

/**
 * Whether what is in a record is the same thing as what stands open: of its kind, by its identifier and its words. Limitations have no
 * identifier of their own.
 */
export function isSame(a: OpenItem, b: OpenItem): boolean {
  return a.kind === b.kind && (a.kind === 'limitation' || a.id === b.id) && plain(a.text) === plain(b.text);
}

const plain = (text: string): string => text.trim().replaceAll(/\s+/g, ' ').toLowerCase();

/**
 * Whether an item was put off: on some clock its limit is later than before, or gone, and it was not done since.
 *
 * @source common practice, no source
 */
export function isPutOff(before: OpenItem, now: OpenItem): boolean {
  if (wasDone(before.done, now.done)) return false;
  return CLOCKS.some((clock) => isLater(before.until[clock], now.until[clock]));
}

const CLOCKS = ['date', 'hours', 'landings'] as const;

function isLater(before: string | number | undefined, now: string | number | undefined): boolean {
  if (before === undefined) return false;
  if (typeof before === 'number' && typeof now === 'number') return !isAtMost(now, before);
  return now === undefined || now > before;
}

function wasDone(before: OpenLimit = {}, now: OpenLimit = {}): boolean {
  return CLOCKS.some((clock) => {
    const [then, since] = [before[clock], now[clock]];
    return since !== undefined && (then === undefined || since > then);
  });
}
