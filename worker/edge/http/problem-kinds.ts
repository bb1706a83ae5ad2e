/** Kinds of problem (RFC 9457) in responses of the service. The slug never changes; `type` is `/problems/<slug>`. */
export const PROBLEM_KINDS = {
  'malformed-request': { status: 400, title: 'The request cannot be parsed' },
  'malformed-json': { status: 400, title: 'The body is not JSON' },
  unauthorized: { status: 401, title: 'A valid key is needed' },
  forbidden: { status: 403, title: 'The key does not allow this' },
  'not-found': { status: 404, title: 'Not found' },
  'method-not-allowed': { status: 405, title: 'The method is not allowed here' },
  'not-acceptable': { status: 406, title: 'The requested format is not available' },
  conflict: { status: 409, title: 'The request conflicts with the current state' },
  'workshop-exists': { status: 409, title: 'The workshop exists already' },
  'release-blocked': { status: 409, title: 'The aircraft cannot be released yet' },
  'precondition-failed': { status: 412, title: 'It has changed since you read it' },
  'body-too-large': { status: 413, title: 'The body is too large' },
  'unsupported-media-type': { status: 415, title: 'The media type of the body is not supported' },
  'range-not-satisfiable': { status: 416, title: 'The requested range does not exist' },
  'digest-differs': { status: 422, title: 'The file does not match its digest' },
  'attachment-refused': { status: 422, title: 'The file cannot go into a pack' },
  'record-not-valid': { status: 422, title: 'The record does not fit its schema' },
  'request-not-valid': { status: 422, title: 'The request does not fit its schema' },
  'idempotency-key-reused': { status: 422, title: 'The idempotency key was used for another request' },
  'precondition-required': { status: 428, title: 'State the version that you read' },
  'too-many-requests': { status: 429, title: 'The key has used all its requests' },
  internal: { status: 500, title: 'Something went wrong on our side' },
  damaged: { status: 500, title: 'A stored file is missing or damaged' },
  unavailable: { status: 503, title: 'The archive cannot be reached at present' },
} as const;

export type ProblemKind = keyof typeof PROBLEM_KINDS;
