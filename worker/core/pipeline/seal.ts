import type { Finding } from '../gate/finding.ts';
import { type Attestation as GateAttestation, releaseVisit } from '../gate/release.ts';
import { canonicalJson } from '../pack/canonical-json.ts';
import { packContext } from '../pack/context.ts';
import { sha256 } from '../pack/digest.ts';
import type { PackIdentity } from '../pack/identity.ts';
import { manifestOf } from '../pack/manifest.ts';
import type { SealedBefore } from '../pack/open-digest.ts';
import { type PackDocument, packDocuments } from '../pack/pack-documents.ts';
import { packFacts } from '../pack/pack-facts.ts';
import { type PackSummary, summaryOf } from '../pack/summary.ts';
import { type SealKey, sealFile } from '../seal/seal.ts';
import { verifyFile } from '../seal/verify.ts';
import type { Assessed } from './assess.ts';
import { printFindings } from './print-finding.ts';
import { type AttachedFiles, placesIn, printPack } from './print-pack.ts';

/** Statement of the releasing person: their name, the assessment that they read, and that they know of no hazard. */
export interface Attestation extends GateAttestation {
  /** `assessmentSha256` of the assessment read. */
  read: string;
}

/** Key of a seal, and the party on whose behalf it seals. */
export interface Sealing {
  /** The workshop as known to the deployment. */
  workshop: { id: string; name: string };
  key: SealKey;
  /** Key of the interface that released it, and the person who owns it. */
  by: { key: string; person: string | null };
}

/** Position of a pack in the archive, assigned by the ledger before sealing. */
export interface PackPlace {
  pack: string;
  number: number;
  issue: number;
  visit: string;
  /** The newest issue of every pack before it, the oldest first: the open items follow from them. */
  before: readonly SealedBefore[];
  previous?: { pack: string; manifestSha256: string };
  supersedes?: string;
}

export interface SealedPack {
  pdf: Uint8Array;
  /** Canonical JSON: exactly the bytes that are digested and attached to the PDF. */
  recordJson: string;
  manifestJson: string;
  manifestSha256: string;
  /** Facts of the pack at its release, as JSON. */
  factsJson: string;
  factsSha256: string;
  pdfSha256: string;
  documents: PackDocument[];
  summary: PackSummary;
}

export type SealOutcome = { ok: true; sealed: SealedPack } | { ok: false; findings: Finding[] };

/**
 * Runs release check, documents, manifest and print: only a visit that the release check releases is sealed. The same
 * arguments give the same bytes.
 *
 * @param files every file that the assessment accepted for the pack
 * @param sealing left out for a pack without a seal, as without a service
 */
export async function seal(
  assessed: Assessed,
  attestation: Attestation,
  place: PackPlace,
  files: AttachedFiles = {},
  sealing?: Sealing,
): Promise<SealOutcome> {
  const outcome = releaseVisit(assessed, attestation);
  if (!outcome.ok) return outcome;
  const { released } = outcome;
  const { recordSha256, recordJson } = assessed;
  const identity: PackIdentity = {
    pack: place.pack,
    issue: String(place.issue),
    issuedAt: attestation.at,
    visit: place.visit,
    previous: place.previous,
    supersedes: place.supersedes,
    sealedBy: sealing && { ...sealing.workshop, kid: sealing.key.kid },
  };
  const context = { ...packContext(assessed, { of: identity, recordSha256, released }), identity };
  const { documents, digests } = await packDocuments(context);
  const summary = summaryOf(released, place, context);
  const factsJson = canonicalJson(await packFacts(context, { place, recordSha256, summary }));
  const factsSha256 = await sha256(factsJson);
  const { read } = attestation;
  const sealedBy = sealing ? sealing.by : null;
  const manifestJson = canonicalJson(
    manifestOf(released, { identity, recordSha256, read, digests, factsSha256, sealedBy }),
  );
  const manifestSha256 = await sha256(manifestJson);
  const printed = await printPack(context, documents, {
    recordJson,
    manifestJson,
    files,
    hasSlot: sealing !== undefined,
  });
  if (printed.findings.length > 0)
    return { ok: false, findings: printFindings(printed.findings, assessed, context.fmt) };
  const facts = {
    registration: assessed.record.aircraft.registration,
    pack: place.pack,
    issue: place.issue,
    issuedAt: attestation.at,
    manifestSha256,
    recordSha256,
  };
  const pdf = sealing
    ? await sealFile(printed.bytes, { workshop: sealing.workshop.id, ...facts }, placesIn(printed), sealing.key)
    : printed.bytes;
  if (sealing?.key.publicJwk) await requireGenuine(pdf, sealing.key.publicJwk);
  const pdfSha256 = await sha256(pdf);
  return {
    ok: true,
    sealed: { pdf, recordJson, manifestJson, manifestSha256, factsJson, factsSha256, pdfSha256, documents, summary },
  };
}

/** @throws Error if a pack is not genuine by the published key: nobody could prove it */
async function requireGenuine(pdf: Uint8Array, publicJwk: NonNullable<SealKey['publicJwk']>): Promise<void> {
  const { kind } = await verifyFile(pdf, { keys: [publicJwk] });
  if (kind !== 'genuine') throw new Error(`Cannot seal: the pack must be genuine by the published key: it is ${kind}`);
}
