/** Every upper bound of the service, in one place; messages quote them. */
export const LIMITS = {
  /** Bytes of a request body. */
  bodyBytes: 1_048_576,
  /** Bytes of all attachments of one pack together: they are in memory at once while it is made. */
  attachedBytes: 24_000_000,
  /** Days for which an uploaded file is kept, and pages of a listing that one sweep checks. */
  handedInDays: 180,
  sweptPages: 50,
  /** Levels of nesting in a record, and keys of one object: both far above what any schema has. */
  jsonDepth: 32,
  jsonKeys: 1_000,
  /** Characters in a one-line field. */
  lineLength: 200,
  /** Characters in a field of several lines. */
  proseLength: 4_000,
  /** Magnitude of any number in a record, in its own unit. */
  number: 1e9,
  /** Findings returned for one record that does not fit the schema. */
  recordIssues: 200,
  /** Max. lifetime of an owner's link, in days. */
  linkDays: 3_660,
  /** Lifetime of an owner's link by default, in days. */
  linkDefaultDays: 730,
  /** Openings recorded per link, and how many of them a list shows. */
  linkOpenings: 1_000,
  openingsListed: 20,
  /** Items on one page of a list. */
  pageSize: 100,
  /** Days for which a repeated request is known by its `Idempotency-Key`. */
  requestKeyDays: 30,
  /** Characters of an `Idempotency-Key`. */
  requestKeyLength: 255,
  /** Requests of one key in a minute. */
  requestsPerMinute: 6_000,
  /** API keys of one workshop, revoked ones included. */
  workshopKeys: 1_000,
  /** Bytes of one blob of a ledger that is restored, and of the ledger itself with the records of its visits. */
  restoredBlobBytes: 32_000_000,
  restoredLedgerBytes: 24_000_000,
  /** Bytes of a record kept in a ledger: the platform allows 2 MB in a row. */
  keptRecordBytes: 1_900_000,
  /** Entries and packs of a ledger that is restored: it is written in one transaction. */
  restoredEntries: 50_000,
  restoredPacks: 500,
  /** Public seal keys of an earlier deployment. */
  takenOverKeys: 1_000,
  /** People in the table of one workshop. */
  workshopPeople: 1_000,
  /** Packs reported to the index in one batch. */
  outboxBatch: 50,
  /** Max. attempts to seal a release again after a change of the ledger during sealing. */
  releaseAttempts: 3,
  /** Seconds after which a client may try again when the archive cannot be reached. */
  retryAfterSeconds: 5,
  /** Pages of one pack. */
  packPages: 500,
  /** Bytes of a photograph or appended PDF. */
  annexBytes: 10_000_000,
  /** Pages of an appended PDF. */
  annexPages: 60,
  // Cost limits of reading one file, counted, never timed: the clock of the runtime does not advance during
  // computation. Measured, sixty pages each: text, 0.8 MB unpacked; a tagged print, 1.6 MB and 170,000 tokens; scans,
  // 520 million pixels at 300 dpi, of which 66 MB were passed through in black and white, 390 MB in colour at 150 dpi;
  // and a drawing of 400,000 lines, 10 MB and 2.6 million tokens.
  /** Bytes unpacked from a file and kept in memory: the output of every filter, and the input of those that read text. */
  fileUnpackedBytes: 16_000_000,
  /** Bytes that pictures and fonts of a file unpack to, processed piece by piece and not kept in memory. */
  filePassedBytes: 400_000_000,
  /** Objects and values read and copied from a file, and entries of its object table. */
  fileObjects: 500_000,
  /** Lexical units of contents, of font tables, and of inline pictures. */
  fileTokens: 4_000_000,
  /** Operators that a reader executes to show an attachment; each form, pattern and drawn letter counts every time it is shown. */
  fileDraws: 20_000_000,
  /** Pixels that a reader unpacks to show an attachment; each picture counts every time it is shown. */
  filePixels: 1_500_000_000,
  // Cost limits of all attachments of one pack together: they are printed in one run.
  packUnpackedBytes: 32_000_000,
  packObjects: 1_500_000,
  packTokens: 12_000_000,
  packUnpackedPixels: 30_000_000,
  /** Pixels of a photograph, and of a picture in an attachment; and scans of a JPEG (progressive ones have about ten). */
  imagePixels: 40_000_000,
  imageScans: 100,
  /** Max. repetitions of a pattern on a page. */
  patternTiles: 10_000_000,
  /** Pixels of a PNG that has transparency or is interlaced, and so has to be unpacked here. */
  imageUnpackedPixels: 10_000_000,
} as const;
