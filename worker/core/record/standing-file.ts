// A section that the record leaves out is kept unchanged, unread: what nobody touched is not checked, printed or signed
// again. A section that it states is completed from the file; `lives`, `bulletins` and `meters` only in the
// entries that it states, because each of their entries is valid alone.

/** Sections that every visit needs. */
export const NEEDED_SECTIONS = ['workshop', 'aircraft', 'certificates', 'baseline'] as const;
/** Sections of one system, calculated as a whole. */
export const WHOLE_SECTIONS = ['wiring', 'electrical', 'antennas', 'surveillance'] as const;
/** Sections whose entries are independent, with the lists of the entries. */
export const ENTRY_SECTIONS = { lives: ['items'], bulletins: ['items'], meters: ['readings', 'counters'] } as const;

/**
 * What tells when an entry of a section was last done, and what is true of that time only: an entry that is done again
 * takes none of it from the standing file, except on a clock that did not move since.
 */
export const OF_LAST_TIME: Readonly<Partial<Record<keyof typeof ENTRY_SECTIONS, { done: string; others: string[] }>>> =
  {
    lives: { done: 'lastDone', others: ['wasDueAt'] },
    bulletins: { done: 'doneOn', others: ['nextDueDate', 'nextDueHours', 'method', 'evidence'] },
  };

export type StandingSection =
  | 'units'
  | (typeof NEEDED_SECTIONS)[number]
  | (typeof WHOLE_SECTIONS)[number]
  | keyof typeof ENTRY_SECTIONS;

/** What is valid of an aircraft after a pack: sections of a record in the present version, in its units, as plain JSON. */
export interface StandingFile {
  pack: string;
  /** SHA-256 of the sealed record from which it follows. */
  sha256: string;
  sections: Readonly<Partial<Record<StandingSection, unknown>>>;
  /** Items that are open after the pack, with their names for the life of the aircraft. */
  open: readonly object[];
  /** Last meter readings of the aircraft. */
  readings: object;
}
