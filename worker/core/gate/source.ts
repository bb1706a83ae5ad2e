/** Reliability of a value or rule: read in its source, cited from memory, or a custom of the trade. */
export type SourceStatus = 'read' | 'memory' | 'practice';

export interface Source {
  text: string;
  status: SourceStatus;
}

/** A custom of the trade without public source. */
export const PRACTICE: Source = { text: 'common practice, no source', status: 'practice' };

/** A source whose words were read. */
export function read(text: string): Source {
  return { text, status: 'read' };
}

/** A source that is cited from memory. */
export function memory(text: string): Source {
  return { text: `${text} (from memory)`, status: 'memory' };
}
