import * as z from 'zod';

/** One limit that a pilot works with, in the units of calculation. */
export const OwnerLimit = z.object({
  /** Stable for ever, such as `full-tanks-payload` or `station/left-seat`. */
  id: z.string(),
  /** As a reader knows it: a text of ours, in English, or the name in the record. */
  name: z.string(),
  quantity: z.enum(['mass', 'volume', 'arm']),
  /** Which way it bounds; `exact` for a figure that is no limit, but that every loading is worked out from. */
  bound: z.enum(['most', 'least', 'exact']),
  /** Null where nothing is allowed, as for a least pilot where nobody may fly alone. */
  value: z.number().nullable(),
  /** What governs it, where it follows from others. */
  governedBy: z.string().optional(),
});
export type OwnerLimit = z.infer<typeof OwnerLimit>;

/** Something that has to be done, by whichever comes first. */
export const OwnerDue = z.object({
  id: z.string(),
  what: z.string(),
  date: z.string().optional(),
  hours: z.number().optional(),
  /** Identifier of the meter that the hours are read on; the one of the airframe where there is none. */
  meter: z.string().optional(),
  /** What the hours are counted of. */
  of: z.string().optional(),
  landings: z.number().optional(),
});
export type OwnerDue = z.infer<typeof OwnerDue>;

/** A list of which every entry that is read is taken, and every other left: what later editions add is none of ours. */
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

/** What a pack tells its owner to fly by, as plain JSON: kept beside the pack, and compared with what today's rules give. */
export const OwnerFacts = z.object({
  limits: readable(OwnerLimit),
  due: readable(OwnerDue),
  /** What the loading check of the page is worked out from, as `loadingFacts` gives it; null where nothing can be loaded. */
  loading: z.unknown().transform((loading) => loading ?? null),
});
export type OwnerFacts = z.infer<typeof OwnerFacts>;

/** Kept facts, leniently: what is not known is left out. Undefined where there are none. */
export function readOwnerFacts(kept: unknown): OwnerFacts | undefined {
  const read = OwnerFacts.safeParse(kept);
  return read.success ? read.data : undefined;
}
