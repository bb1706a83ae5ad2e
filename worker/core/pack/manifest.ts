import type { ReleasedVisit } from '../gate/release.ts';
import { RULE_SET } from '../gate/rule-set.ts';
import { statementText } from '../gate/statement-text.ts';
import { recordFormatter } from '../record/record-formatter.ts';
import type { Visit } from '../record/visit.ts';
import type { Formatter } from '../text/formatter.ts';
import type { DocumentDigest } from './document-digest.ts';
import type { PackIdentity } from './identity.ts';

export const MANIFEST_FORMAT = 'slipmark-manifest/2';

/**
 * Components of a sealed pack by digest, the person who released it and the statement: the content that is sealed. A
 * reader uses the members that it knows and ignores others. Form 1 lacks `sealedBy`, `workshop`, `facts`, `signatures`,
 * `entriesSha256` and `notCovered`.
 */
export interface Manifest {
  format: typeof MANIFEST_FORMAT;
  pack: string;
  issue: string;
  registration: string;
  visit: string;
  issuedAt: string;
  ruleSet: string;
  regime: { id: string; version: string };
  release: {
    name: string;
    capacity: string;
    authorisation: string | null;
    statement: string;
    text: string;
    /** Further statements of the same release; left out without any. */
    further?: { statement: string; text: string; scope: string }[];
    at: string;
    /** Digest of the assessment that the person read. */
    read: string;
    knowsOfNoHazard: true;
  };
  /** Every person named in the record, with their authorisation. */
  people: { id: string; name: string; capacity: string; authorisation: string | null }[];
  /** Independent inspections of critical tasks: task, inspector and time. */
  secondInspections: { task: string; by: string; at: string }[];
  record: { sha256: string };
  documents: DocumentDigest[];
  /** Files shown in the pack or appended to it, by the digest under which they were uploaded. */
  attachments: { id: string; title: string; sha256: string }[];
  previous: { pack: string; manifestSha256: string } | null;
  supersedes: string | null;
  /** The workshop as known to the deployment; null if no service sealed the pack. */
  workshop: { id: string; name: string } | null;
  /** Key of the interface that released it, and the person who owns it, if it belongs to a person. */
  sealedBy: { key: string; person: string | null } | null;
  /** Statements about the pack at its release. */
  facts: { sha256: string };
  /** Signatures of people by their own keys. */
  signatures: readonly never[];
  /** Digest of the entries of people one by one, if kept. */
  entriesSha256: null;
  /** Parts of the visit that the pack does not cover. */
  notCovered: readonly never[];
}

export function manifestOf(
  released: ReleasedVisit,
  {
    identity,
    recordSha256,
    read,
    digests,
    factsSha256,
    sealedBy,
  }: {
    identity: PackIdentity;
    recordSha256: string;
    read: string;
    digests: DocumentDigest[];
    factsSha256: string;
    sealedBy: Manifest['sealedBy'];
  },
): Manifest {
  const { visit, regime, releasedBy, statement, further, releasedAt } = released;
  const fmt = recordFormatter(visit);
  return {
    format: MANIFEST_FORMAT,
    pack: identity.pack,
    issue: identity.issue,
    registration: visit.aircraft.registration,
    visit: identity.visit,
    issuedAt: identity.issuedAt,
    ruleSet: RULE_SET,
    regime: { id: regime.id, version: regime.version },
    release: {
      name: releasedBy.name,
      capacity: releasedBy.capacity,
      authorisation: releasedBy.authorisation ?? null,
      statement: statement.id,
      text: statementText(statement, visit, fmt),
      ...(further.length > 0 && { further: further.map((each) => furtherOf(each, visit, fmt)) }),
      at: releasedAt,
      read,
      knowsOfNoHazard: true,
    },
    people: visit.people.map(({ id, name, capacity, authorisation = null }) => ({ id, name, capacity, authorisation })),
    secondInspections: (visit.inspection?.tasks ?? []).flatMap(({ id: task, secondInspection }) =>
      secondInspection ? [{ task, by: secondInspection.by, at: secondInspection.at }] : [],
    ),
    record: { sha256: recordSha256 },
    documents: digests,
    attachments: (visit.attachments ?? []).map(({ id, title, sha256 }) => ({ id, title, sha256 })),
    previous: identity.previous ?? null,
    supersedes: identity.supersedes ?? null,
    workshop: identity.sealedBy ? { id: identity.sealedBy.id, name: identity.sealedBy.name } : null,
    sealedBy,
    facts: { sha256: factsSha256 },
    signatures: [],
    entriesSha256: null,
    notCovered: [],
  };
}

type Further = NonNullable<Manifest['release']['further']>[number];

function furtherOf({ statement, scope }: ReleasedVisit['further'][number], visit: Visit, fmt: Formatter): Further {
  return { statement: statement.id, text: statementText(statement, visit, fmt), scope };
}
