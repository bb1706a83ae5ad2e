import { z } from 'zod';

const sha256 = z.string().regex(/^[0-9a-f]{64}$/);

/** What a workshop signs when it seals a pack. */
export const SealClaims = z.object({
  format: z.literal('slipmark-seal/1'),
  workshop: z.string(),
  registration: z.string(),
  pack: z.string(),
  issue: z.int(),
  issuedAt: z.string(),
  manifestSha256: sha256,
  recordSha256: sha256,
  /** Digest and length of the file with an empty slot. */
  pdf: z.object({ sha256, bytes: z.int() }),
  /** Where a change is: name, first byte, the byte after the last, and the start of a digest. The digest above is the proof. */
  parts: z.array(z.tuple([z.string(), z.int(), z.int(), z.string()])),
});
export type SealClaims = z.infer<typeof SealClaims>;
