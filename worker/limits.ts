/** Every upper bound of the service, in one place; messages quote them. */
export const LIMITS = {
  /** Bytes of a request body. */
  bodyBytes: 1_048_576,
  /** Levels of nesting in a record, far above what the schema has. */
  jsonDepth: 32,
  /** Characters in a one-line field. */
  lineLength: 200,
  /** Characters in a field of several lines. */
  proseLength: 4_000,
  /** Magnitude of any number in a record, in its own unit. */
  number: 1e9,
  /** Findings returned for one record that does not fit the schema. */
  recordIssues: 200,
  /** Days an owner's link may live. */
  linkDays: 3_660,
  /** Items on one page of a list. */
  pageSize: 100,
  /** Pages of one pack. */
  packPages: 500,
} as const;
