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

/** What the releasing person does: names themselves, what they read, and that they know of no hazard. */
export interface Attestation extends GateAttestation {
  /** The `assessmentSha256` that was read. */
  read: string;
}

/** With what a pack is sealed, and on whose behalf. */
export interface Sealing {
  /** The workshop as the deployment knows it. */
  workshop: { id: string; name: string };
  key: SealKey;
  /** The key of the interface that released it, and the person in whose hand that is. */
  by: { key: string; person: string | null };
}

/** Place of a pack in the archive, given by the ledger before sealing. */
export interface PackPlace {
  pack: string;
  number: number;
  issue: number;
  visit: string;
  /** The newest issue of every pack before it, the oldest first: what stood open follows from them. */
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
  /** What was said of the pack when it was released, as JSON. */
  factsJson: string;
  factsSha256: string;
  pdfSha256: string;
  documents: PackDocument[];
  summary: PackSummary;
}

export type SealOutcome = { ok: true; sealed: SealedPack } | { ok: false; findings: Finding[] };

/**
 * Gate, documents, manifest, print: only a visit that the gate releases comes out. The same arguments give the same bytes.
 *
 * @param files every file that the assessment found fit for the pack
 * @param sealing without it the pack has no seal of its own, as when it is made without a service
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

/** @throws Error where a pack is not genuine by the key that is published: nobody could prove it */
async function requireGenuine(pdf: Uint8Array, publicJwk: NonNullable<SealKey['publicJwk']>): Promise<void> {
  const { kind } = await verifyFile(pdf, { keys: [publicJwk] });
  if (kind !== 'genuine') throw new Error(`Cannot seal: the pack must be genuine by the published key: it is ${kind}`);
}
