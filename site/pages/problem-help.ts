import { LIMITS } from '../../worker/core/limits.ts';
import type { ProblemKind } from '../../worker/edge/http/problem-kinds.ts';

/** What the sender can do about each kind of problem. */
export const PROBLEM_HELP: Readonly<Record<ProblemKind, string>> = {
  'malformed-request': 'Correct the address, the query or the header that the detail names, then send it again.',
  'malformed-json': 'Line and column say where the text stops being JSON. Write the body with a JSON library.',
  unauthorized: 'Send Authorization: Bearer with a key of the workshop. A revoked key is refused like an unknown one.',
  forbidden:
    'The key is good, and does not allow this; the detail says why. It lacks a scope: ask whoever keeps the keys for one that has it. Or it is in the hand of a person: that person releases and withdraws in their own name alone, while the table of people of the workshop has them.',
  'not-found': 'Check the address. What belongs to another workshop looks the same as what does not exist.',
  'method-not-allowed': 'The Allow header lists what can be done at this address.',
  'not-acceptable': 'Ask for one of the forms that the detail names, or leave Accept out.',
  conflict:
    'The detail says which it is. Somebody else wrote at the same moment: read again, look at what changed, and send again. The pack was withdrawn: amend the record with what was wrong, and release that; it becomes the next issue. The clock of the service is behind the latest entry of the ledger: whoever runs the service sets the clock right, then send the same request again. A file was cleared away: hand it in again. In every other case nothing was done, and sending it again changes nothing.',
  'workshop-exists': 'The name is taken. The keys of that workshop are made by one of its own keys.',
  'release-blocked':
    'Read the findings. What blocks must be put right in the record; a caution needs a named person who answers for it with a reason.',
  'precondition-failed':
    'It changed after you read it. Read it again, look at what changed, and send your change with the new ETag.',
  'body-too-large': `A body may have ${LIMITS.bodyBytes} bytes. Photographs and scans do not belong into the record.`,
  'unsupported-media-type':
    'Name the kind of the body in Content-Type: application/json, or application/merge-patch+json for an amendment.',
  'range-not-satisfiable': 'Leave the Range header out, or ask for a part that lies inside the file.',
  'digest-differs':
    'The bytes that arrived are not those of the digest in the address. Work the SHA-256 out over the file itself and send it again.',
  'attachment-refused':
    'The detail says why. Hand in a plain copy: print the paper to PDF, or save the picture as JPEG. A record that names the refused file gets a caution, and the pack says what was left out.',
  'record-not-valid':
    'Each finding names a place in the record and what was expected there. Nothing was kept: correct them all and send the record again.',
  'request-not-valid': 'Each finding names a place in the body and what was expected there. Nothing was done.',
  'idempotency-key-reused': 'Give every new request a new key. The same key is for repeating the same request only.',
  'precondition-required': 'Send If-Match with the ETag of what you read, so that no change of somebody else is lost.',
  'too-many-requests':
    'Wait as long as Retry-After says. RateLimit tells in every answer what is left; tools that work at the same time do better with a key each.',
  internal:
    'Nothing you sent should cause this. Try once more; if it stays, tell whoever runs the service when it happened.',
  damaged:
    'What is stored is not what was kept, and is shown to nobody. Do not post an aircraft anew whose ledger was lost: packs that were given out would stand beside it. Whoever runs the service finds all that is damaged with npx slipmark scrub, and brings it back from an export with npx slipmark import.',
  unavailable: 'Nothing was lost. Wait as long as Retry-After says, then send the same request again.',
};
