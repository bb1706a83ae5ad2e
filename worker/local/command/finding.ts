/** A finding as the command says it. */
export interface Finding {
  code: string;
  severity: string;
  pointer: string;
  sentence: string;
  remedy: string;
  /** Person who has accepted a caution. */
  acknowledgedBy?: string | undefined;
}

/** Line and column from 1, as editors count. */
export interface Place {
  line: number;
  column: number;
}
