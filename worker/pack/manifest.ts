import type { ReleasedVisit } from '../gate/release.ts';
import { RULE_SET } from '../gate/rule-set.ts';
import type { PackIdentity } from './identity.ts';
import type { DocumentDigest } from './views/record-of-issue.ts';

/** What a sealed pack is made of, by digest, and who released it on what words: the thing that is sealed. */
export interface Manifest {
  format: 'slipmark-manifest/1';
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
    at: string;
    /** Digest of the assessment that the person read. */
    read: string;
    knowsOfNoHazard: true;
  };
  /** Everybody whom the record names, with what they hold. */
  people: { id: string; name: string; capacity: string; authorisation: string | null }[];
  /** Independent inspections of critical tasks: who attests what, and when. */
  secondInspections: { task: string; by: string; at: string }[];
  record: { sha256: string };
  documents: DocumentDigest[];
  /** Files shown in the pack or appended to it, by the digest under which they were handed in. */
  attachments: { id: string; title: string; sha256: string }[];
  previous: { pack: string; manifestSha256: string } | null;
  supersedes: string | null;
}

export function manifestOf(
  released: ReleasedVisit,
  {
    identity,
    recordSha256,
    read,
    digests,
  }: { identity: PackIdentity; recordSha256: string; read: string; digests: DocumentDigest[] },
): Manifest {
  const { visit, regime, releasedBy, statement, releasedAt } = released;
  return {
    format: 'slipmark-manifest/1',
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
      text: statement.text,
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
  };
}
