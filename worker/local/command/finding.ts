/** Finding as the command reports it. */
export interface Finding {
  code: string;
  severity: string;
  pointer: string;
  sentence: string;
  remedy: string;
  /** Finding from which it follows. */
  follows?: { code: string; pointer: string } | undefined;
  /** Person who accepted a caution. */
  acknowledgedBy?: string | undefined;
}

/** Line and column from 1, as editors count. */
export interface Place {
  line: number;
  column: number;
}
