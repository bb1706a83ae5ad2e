import * as z from 'zod';
import { COUNTS } from '../record/counts.ts';
import { PRODUCTS } from '../record/product.ts';

/** One limit for a pilot, in calculation units. */
export const OwnerLimit = z.object({
  /** Stable for ever, such as `full-tanks-payload` or `station/left-seat`. */
  id: z.string(),
  /** Name for the reader: a text of ours, in English, or the name in the record. */
  name: z.string(),
  quantity: z.enum(['mass', 'volume', 'arm']),
  /** Direction of the limit; `exact` for a figure that is not a limit, but an input of every loading. */
  bound: z.enum(['most', 'least', 'exact']),
  /** Null if nothing is allowed, as for a min. pilot mass if nobody may fly alone. */
  value: z.number().nullable(),
  /** Limit that it follows from, if derived. */
  governedBy: z.string().optional(),
});
export type OwnerLimit = z.infer<typeof OwnerLimit>;

/** An item due, by the limit that is reached first. */
export const OwnerDue = z.object({
  id: z.string(),
  /** Kind of item; left out in packs sealed before it was kept. */
  kind: z.string().optional(),
  basis: z.string().optional(),
  what: z.string(),
  date: z.string().optional(),
  hours: z.number().optional(),
  /** Identifier of the meter of the hours; the airframe's by default. */
  meter: z.string().optional(),
  /** Product that the hours count. */
  of: z.string().optional(),
  landings: z.number().optional(),
  launches: z.number().optional(),
  cycles: z.number().optional(),
  starts: z.number().optional(),
  /** Counters of these counts. */
  counters: z
    .array(z.object({ counts: z.enum(COUNTS), id: z.string().optional(), of: z.enum(['airframe', ...PRODUCTS]) }))
    .optional(),
  /** Due only after all of its clocks have expired. */
  dueAfter: z.literal('all').optional(),
});
export type OwnerDue = z.infer<typeof OwnerDue>;

/** List that keeps every readable entry and drops the others: entries added by later editions are ignored. */
const readable = <Entry extends z.ZodType>(entry: Entry) =>
  z
    .array(z.unknown())
    .catch([])
    .transform((entries): z.infer<Entry>[] =>
      entries.flatMap((each) => {
        const read = entry.safeParse(each);
        return read.success ? [read.data] : [];
      }),
    );

/** Figures with which the owner flies, as plain JSON: kept with the pack, and compared with the results of today's rules. */
export const OwnerFacts = z.object({
  limits: readable(OwnerLimit),
  due: readable(OwnerDue),
  /** Data of the page's loading check, from `loadingFacts`; null if nothing can be loaded. */
  loading: z.unknown().transform((loading) => loading ?? null),
});
export type OwnerFacts = z.infer<typeof OwnerFacts>;

/** Reads kept facts leniently: unknown members are left out. Undefined without any. */
export function readOwnerFacts(kept: unknown): OwnerFacts | undefined {
  const read = OwnerFacts.safeParse(kept);
  return read.success ? read.data : undefined;
}
