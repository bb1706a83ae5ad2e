import { compute } from './calc/results.ts';
import type { Finding } from './gate/finding.ts';
import { type Assessment, passGate } from './gate/gate.ts';
import { regimeNamed } from './gate/regimes/table.ts';
import { type Attestation as GateAttestation, releaseVisit } from './gate/release.ts';
import type { ArchiveFacts } from './gate/rule.ts';
import { RULE_SET } from './gate/rule-set.ts';
import { canonicalJson } from './pack/canonical-json.ts';
import { type PackContext, packContext } from './pack/context.ts';
import { sha256 } from './pack/digest.ts';
import { NOT_RELEASED, type PackIdentity } from './pack/identity.ts';
import { manifestOf } from './pack/manifest.ts';
import { type PackDocument, packDocuments } from './pack/pack-documents.ts';
import { DASH } from './pack/people.ts';
import { type PackSummary, summaryOf } from './pack/summary.ts';
import { imageSource } from './pack/views/photographs.ts';
import { type PrintAttachment, type PrintDocument, type Printed, print } from './print/index.ts';
import { printFinding } from './print-finding.ts';
import { type SealKey, sealFile } from './seal/seal.ts';
import { emptySlot, SLOT_NAME, slotBytes } from './seal/slot.ts';
import { readRecord } from './visit/read-record.ts';
import type { VisitRecord } from './visit/record.ts';
import type { RecordIssue } from './visit/record-issue.ts';

export { assessmentAnswer } from './assessment-answer.ts';
export type { ArchiveFacts, AttachmentFact } from './gate/rule.ts';
export { carriedForward } from './pack/carry-forward.ts';
export { loadingFacts } from './pack/loading-facts.ts';
export { nextDue } from './pack/next-due.ts';
export type { PackDocument } from './pack/pack-documents.ts';
export type { PackSummary } from './pack/summary.ts';
export { cleanImage, inspectAttachment } from './print/index.ts';

/** A record that fits the schema, computed and checked. */
export interface Assessed extends Assessment {
  record: VisitRecord;
  /** The record in canonical JSON: what is digested, attached and kept. */
  recordJson: string;
  /** SHA-256 of `recordJson`. */
  recordSha256: string;
  /** SHA-256 over record, rule set and regime: what an inspector reads and releases. */
  assessmentSha256: string;
}

export type AssessOutcome = { ok: true; assessed: Assessed } | { ok: false; issues: RecordIssue[] };

/**
 * Reads, computes and checks a record.
 *
 * @param input parsed JSON of any shape
 * @param at the moment of the assessment, ISO 8601 with offset
 */
export async function assess(input: unknown, at: string, facts: ArchiveFacts = {}): Promise<AssessOutcome> {
  const read = readRecord(input);
  if (!read.ok) return read;
  const { record, visit } = read;
  const recordJson = canonicalJson(record);
  // Digested beside the computing: the platform hashes on a thread of its own.
  const digesting = sha256(recordJson);
  const { id, version, leastPilotKg, standardPersonKg } = regimeNamed(visit.aircraft.regime);
  const results = compute(visit, { leastPilotKg: leastPilotKg.value, standardPersonKg: standardPersonKg.value, at });
  const assessment = passGate(visit, results, { at, facts });
  const recordSha256 = await digesting;
  const assessmentSha256 = await sha256(canonicalJson({ recordSha256, ruleSet: RULE_SET, regime: { id, version } }));
  return { ok: true, assessed: { ...assessment, record, recordJson, recordSha256, assessmentSha256 } };
}

function draftContext(assessed: Assessed, at: string): PackContext {
  const identity: PackIdentity = {
    pack: DASH,
    issue: DASH,
    issuedAt: at,
    visit: DASH,
    previous: undefined,
    supersedes: undefined,
  };
  return packContext(assessed, { identity, recordSha256: assessed.recordSha256 });
}

/** What stands now, as documents. Nothing in them is released. */
export async function draftDocuments(assessed: Assessed, at: string): Promise<PackDocument[]> {
  return (await packDocuments(draftContext(assessed, at))).documents;
}

/** The files of attachments, by the SHA-256 that the record names. */
export type AttachedFiles = Readonly<Record<string, Uint8Array>>;

export interface DraftOptions {
  /** One document alone. @default the whole pack */
  document?: string;
  /** @default what the workshop prints on */
  paper?: 'A4' | 'Letter';
  /** @default none: what needs a file says that it is missing */
  files?: AttachedFiles;
}

/** What stands now, as a PDF with a NOT RELEASED mark on every page; and what could not be printed. */
export async function draftPdf(
  assessed: Assessed,
  at: string,
  options: DraftOptions = {},
): Promise<{ bytes: Uint8Array; findings: Finding[] }> {
  const context = draftContext(assessed, at);
  const all = (await packDocuments(context, { alone: options.document })).documents;
  const documents = options.document === undefined ? all : all.filter(({ id }) => id === options.document);
  const printed = await printPack(context, documents, {
    recordJson: assessed.recordJson,
    paper: options.paper,
    files: options.files ?? {},
  });
  return { bytes: printed.bytes, findings: printed.findings.map((finding) => printFinding(finding, context.say)) };
}

/** What the releasing person does: names themselves, what they read, and that they know of no hazard. */
export interface Attestation extends GateAttestation {
  /** The `assessmentSha256` that was read. */
  read: string;
}

/** Place of a pack in the archive, given by the ledger before sealing. */
/** With what a pack is sealed: the workshop as the deployment knows it, and its key. */
export interface Sealing {
  workshop: string;
  key: SealKey;
}

export interface PackPlace {
  pack: string;
  number: number;
  issue: number;
  visit: string;
  previous?: { pack: string; manifestSha256: string };
  supersedes?: string;
}

export interface SealedPack {
  pdf: Uint8Array;
  /** Canonical JSON: exactly the bytes that are digested and attached to the PDF. */
  recordJson: string;
  manifestJson: string;
  manifestSha256: string;
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
  };
  const context = packContext(assessed, { identity, recordSha256, released });
  const { documents, digests } = await packDocuments(context);
  const manifestJson = canonicalJson(manifestOf(released, { identity, recordSha256, read: attestation.read, digests }));
  const manifestSha256 = await sha256(manifestJson);
  const printed = await printPack(context, documents, {
    recordJson,
    manifestJson,
    files,
    hasSlot: sealing !== undefined,
  });
  if (printed.findings.length > 0)
    return { ok: false, findings: printed.findings.map((finding) => printFinding(finding, context.say)) };
  const facts = {
    registration: assessed.record.aircraft.registration,
    pack: place.pack,
    issue: place.issue,
    issuedAt: attestation.at,
    manifestSha256,
    recordSha256,
  };
  const pdf = sealing
    ? await sealFile(printed.bytes, { workshop: sealing.workshop, ...facts }, printed.parts, sealing.key)
    : printed.bytes;
  const pdfSha256 = await sha256(pdf);
  const summary = summaryOf(released, place, context);
  return {
    ok: true,
    sealed: { pdf, recordJson, manifestJson, manifestSha256, pdfSha256, documents, summary },
  };
}

interface PrintPackOptions {
  recordJson: string;
  manifestJson?: string;
  paper?: 'A4' | 'Letter' | undefined;
  files: AttachedFiles;
  hasSlot?: boolean;
}

/** The mark depends on the release alone: nobody who prints a pack can leave it out. */
function printPack(
  context: PackContext,
  documents: readonly PackDocument[],
  options: PrintPackOptions,
): Promise<Printed> {
  const { visit, identity, released, recordSha256, say } = context;
  const { registration, maker, model } = visit.aircraft;
  return print({
    documents: documents.map((document) => withPages(document, options.files)),
    images: imagesOf(context, options.files),
    header: { left: visit.workshop.name, right: registration },
    footer: {
      left: registration,
      centre: released
        ? say.words`Pack ${identity.pack} · issue ${identity.issue}`
        : say.words`Draft · record ${recordSha256.slice(0, 12)}`,
    },
    ...(released ? {} : { mark: say.term(NOT_RELEASED) }),
    paper: options.paper ?? visit.workshop.paper ?? 'A4',
    metadata: {
      title: released
        ? say.words`Release pack ${registration}, ${identity.pack}`
        : say.words`Release pack ${registration}, draft`,
      subject: say.words`Modification record and release pack, ${maker} ${model}`,
      author: visit.workshop.name,
      language: say.lexicon.language,
      issuedAt: identity.issuedAt,
      identifier: recordSha256.slice(0, 32),
    },
    attachments: attachments(context, options),
    words: say.words,
  });
}

/** A document with the pages of the paper that follows it. */
function withPages({ appends, ...document }: PackDocument, files: AttachedFiles): PrintDocument {
  if (appends === undefined) return document;
  const bytes = files[appends];
  if (!bytes) throw new Error(`Cannot print ${document.id}: the file ${appends} must be given`);
  return { ...document, appended: { bytes, title: document.title } };
}

/** Pictures by the source under which documents show them. */
function imagesOf({ attachments }: PackContext, files: AttachedFiles): Record<string, Uint8Array> {
  const pictures = Object.entries(files).filter(([sha256]) => {
    const fact = attachments[sha256];
    return fact?.ok === true && fact.kind !== 'pdf';
  });
  return Object.fromEntries(pictures.map(([sha256, bytes]) => [imageSource(sha256), bytes]));
}

function attachments(
  { say }: PackContext,
  { recordJson, manifestJson, hasSlot = false }: PrintPackOptions,
): PrintAttachment[] {
  const attached = (
    name: string,
    text: string,
    description: string,
    relationship: 'Source' | 'Data',
  ): PrintAttachment => ({
    name,
    bytes: new TextEncoder().encode(text),
    mediaType: 'application/json',
    description,
    relationship,
  });
  return [
    attached('record.json', recordJson, say.words`The visit record that this pack was made from`, 'Source'),
    ...(manifestJson
      ? [attached('manifest.json', manifestJson, say.words`Digests of the record and of every document`, 'Data')]
      : []),
    ...(hasSlot ? [sealSlot(say.words`Seal of the workshop over every byte of this file but its own`)] : []),
  ];
}

/** Takes the seal: digests of every page, of the record and of the manifest, signed. */
const sealSlot = (description: string): PrintAttachment => ({
  name: SLOT_NAME,
  bytes: (pages) => emptySlot(slotBytes(pages + 2)),
  mediaType: 'application/jose',
  description,
  relationship: 'Supplement',
  isPlain: true,
});
