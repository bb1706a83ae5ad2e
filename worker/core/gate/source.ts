/** How sure we are of a value or a rule: read in the source, remembered, or a custom of the trade that no source states. */
export type SourceStatus = 'read' | 'memory' | 'practice';

export interface Source {
  text: string;
  status: SourceStatus;
}

/** Where a custom of the trade has no public source. */
export const PRACTICE: Source = { text: 'common practice, no source', status: 'practice' };

/** A source whose words were read. */
export function read(text: string): Source {
  return { text, status: 'read' };
}

/** A source that is cited from memory. */
export function memory(text: string): Source {
  return { text: `${text} (from memory)`, status: 'memory' };
}
