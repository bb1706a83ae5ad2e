/** Every kind of problem (RFC 9457) that the service answers with. The slug is stable for ever; `type` is `/problems/<slug>`. */
export const PROBLEM_KINDS = {
  'malformed-request': { status: 400, title: 'The request cannot be understood' },
  'malformed-json': { status: 400, title: 'The body is not JSON' },
  unauthorized: { status: 401, title: 'A valid key is needed' },
  forbidden: { status: 403, title: 'The key does not allow this' },
  'not-found': { status: 404, title: 'There is nothing here' },
  'method-not-allowed': { status: 405, title: 'This cannot be done here' },
  'not-acceptable': { status: 406, title: 'It does not exist in the form asked for' },
  conflict: { status: 409, title: 'That does not go with how things stand' },
  'workshop-exists': { status: 409, title: 'The workshop exists already' },
  'release-blocked': { status: 409, title: 'The aircraft cannot be released yet' },
  'precondition-failed': { status: 412, title: 'It is no longer what you read' },
  'body-too-large': { status: 413, title: 'The body is too large' },
  'unsupported-media-type': { status: 415, title: 'The body is of the wrong kind' },
  'range-not-satisfiable': { status: 416, title: 'The part asked for does not exist' },
  'digest-differs': { status: 422, title: 'The file is not the one that was named' },
  'attachment-refused': { status: 422, title: 'The file cannot go into a pack' },
  'record-not-valid': { status: 422, title: 'The record does not fit its schema' },
  'request-not-valid': { status: 422, title: 'The request does not fit its schema' },
  'idempotency-key-reused': { status: 422, title: 'The idempotency key was used for something else' },
  'precondition-required': { status: 428, title: 'Say which form you read' },
  'too-many-requests': { status: 429, title: 'The key has used up its share' },
  internal: { status: 500, title: 'Something went wrong on our side' },
  damaged: { status: 500, title: 'A stored file is missing or is not what was kept' },
  unavailable: { status: 503, title: 'The archive cannot be reached just now' },
} as const;

export type ProblemKind = keyof typeof PROBLEM_KINDS;
