/** Reliability of a value or rule: read in its source, cited from memory, or a custom of the trade. */
export type SourceStatus = 'read' | 'memory' | 'practice';

/** Where a value or rule comes from. The text is a reference, printed in every language as it is. */
export interface Source {
  text: string;
  status: SourceStatus;
}

/** A custom of the trade without public source. */
export const PRACTICE: Source = { text: 'common practice, no source', status: 'practice' };

/** The regime sets no such figure. */
export const NONE_SET: Source = { text: 'none set', status: 'practice' };

/** A source whose words were read. */
export function read(text: string): Source {
  return { text, status: 'read' };
}

/** A source whose words were not read: its figures only caution, and packs list them for confirmation. */
export function memory(text: string): Source {
  return { text, status: 'memory' };
}

/** Whether a rule may block by a figure: it was read, or is a custom of the trade. */
export function mayBlock({ status }: Source): boolean {
  return status !== 'memory';
}
