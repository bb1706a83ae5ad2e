import { LIMITS } from '../../worker/core/limits.ts';
import type { ProblemKind } from '../../worker/edge/http/problem-kinds.ts';

/** Advice to the sender, by kind of problem. */
export const PROBLEM_HELP: Readonly<Record<ProblemKind, string>> = {
  'malformed-request': 'Correct the address, the query or the header that the detail names, then send it again.',
  'malformed-json': 'Line and column say where the text stops being JSON. Write the body with a JSON library.',
  unauthorized: 'Send Authorization: Bearer with a key of the workshop. A revoked key is refused like an unknown one.',
  forbidden:
    'The key is valid, but does not allow this; the detail says why. If it lacks a scope, get a key with that scope from the administrator of the workshop. If a person holds it, that person releases and withdraws in their own name only, while the table of people of the workshop has them.',
  'not-found': 'Check the address. What belongs to another workshop looks the same as what does not exist.',
  'method-not-allowed': 'The Allow header lists what can be done at this address.',
  'not-acceptable': 'Request one of the formats that the detail names, or omit Accept.',
  conflict:
    'The detail says which it is. Somebody else wrote at the same time: read again, check what changed, and send again. The pack was withdrawn: amend the record with what was wrong, and release that; it becomes the next issue. The clock of the service is behind the latest entry of the ledger: the operator corrects the clock, then send the same request again. A file was deleted: upload it again. In every other case nothing was done, and sending it again changes nothing.',
  'workshop-exists': 'The name is taken. Make further keys of that workshop with one of its admin keys.',
  'release-blocked':
    'Read the findings. Fix what blocks in the record; a caution needs a named person who accepts it with a reason.',
  'precondition-failed':
    'It changed after you read it. Read it again, check what changed, and send your change with the new ETag.',
  'body-too-large': `A body may have ${LIMITS.bodyBytes} bytes. Photographs and scans do not belong into the record.`,
  'unsupported-media-type':
    'Name the kind of the body in Content-Type: application/json, or application/merge-patch+json for an amendment.',
  'range-not-satisfiable': 'Omit the Range header, or request a part inside the file.',
  'digest-differs':
    'The bytes that arrived are not those of the digest in the address. Calculate the SHA-256 of the file itself and send it again.',
  'attachment-refused':
    'The detail says why. Upload a plain copy: print the document to PDF, or save the picture as JPEG. A record that names the refused file gets a caution, and the pack lists it as left out.',
  'record-not-valid':
    'Each finding names a place in the record and what was expected there. Nothing was kept: correct them all and send the record again.',
  'request-not-valid': 'Each finding names a place in the body and what was expected there. Nothing was done.',
  'idempotency-key-reused': 'Give every new request a new key. The same key is for repeating the same request only.',
  'precondition-required': 'Send If-Match with the ETag of what you read, so that no change of somebody else is lost.',
  'too-many-requests':
    'Wait as long as Retry-After says. RateLimit in every response shows what is left; tools that work at the same time do better with a key each.',
  internal:
    'Nothing you sent should cause this. Try once more; if it fails again, tell the operator of the service when it happened.',
  damaged:
    'Stored data is damaged or missing, and is not shown. If the ledger of an aircraft was lost, do not send the aircraft again: the new ledger would contradict the packs already issued. The operator finds all damage with npx slipmark scrub, and restores it from an export with npx slipmark import.',
  unavailable: 'Nothing was lost. Wait as long as Retry-After says, then send the same request again.',
};
