export const SEAL_FORMAT = 'slipmark-seal/1';

/** What a workshop signs when it seals a pack. */
export interface SealClaims {
  format: typeof SEAL_FORMAT;
  workshop: string;
  registration: string;
  pack: string;
  issue: number;
  issuedAt: string;
  manifestSha256: string;
  recordSha256: string;
  /** Digest and length of the file with an empty slot. */
  pdf: { sha256: string; bytes: number };
  /** Where a change is: name, first byte, the byte after the last, and the start of a digest. The digest above is the proof. */
  parts: [name: string, start: number, end: number, digest: string][];
}
