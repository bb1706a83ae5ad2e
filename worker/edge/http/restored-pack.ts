import * as z from 'zod';
import type { Assessed, PackSummary } from '../../core/core.ts';
import { sha256 } from '../../core/pack/digest.ts';
import { SHA256 } from '../../core/patterns.ts';
import type { LedgerName, SealFacts } from '../archive/archive.ts';
import type { ReplayedPack } from '../archive/ledger/replay.ts';
import { orUnavailable } from './answer.ts';
import { FactsForm } from './facts-form.ts';
import type { Defect } from './problem.ts';
import { defect } from './request-body.ts';
import type { Call } from './route.ts';

const digest = z.string().regex(SHA256);

/** Part of a manifest, of any form, that a restoration needs. */
const Manifest = z.looseObject({
  format: z.enum(['slipmark-manifest/1', 'slipmark-manifest/2']),
  pack: z.string(),
  issue: z.string(),
  registration: z.string(),
  visit: z.string(),
  issuedAt: z.string(),
  regime: z.looseObject({ id: z.string() }),
  release: z.looseObject({ name: z.string() }),
  record: z.looseObject({ sha256: digest }),
  documents: z.array(z.looseObject({ id: z.string(), sha256: digest })),
  attachments: z.array(z.looseObject({ sha256: digest })),
  previous: z.looseObject({ manifestSha256: digest }).nullable(),
  supersedes: z.string().nullable(),
  facts: z.looseObject({ sha256: digest }).optional(),
});
type Manifest = z.infer<typeof Manifest>;

const Documents = z.array(
  z.looseObject({ id: z.string(), title: z.string(), html: z.string(), appends: digest.optional() }),
);
type Documents = z.infer<typeof Documents>;

export type Staged = ReadonlyMap<string, SealFacts | null>;

/** Pack to be restored. */
export interface PackToRestore {
  name: LedgerName;
  replayed: ReplayedPack;
  /** Digest of the manifest of the pack that was sealed before it. */
  previousSha256: string | null;
  /** Summary for lists, from the export. */
  given: PackSummary;
  staged: Staged;
}

/** Consistent pack: its summary for lists, and all its staged files. */
export type RestoredPack = { ok: true; summary: PackSummary; digests: string[] } | { ok: false; defects: Defect[] };

/**
 * Checks a pack against its seal, its manifest and the chain, and calculates its summary for lists. Nothing else that
 * was sent is trusted, and only our own HTML is accepted.
 */
export async function restoredPack(call: Call, pack: PackToRestore): Promise<RestoredPack> {
  const { replayed, staged } = pack;
  const unbrought = unbroughtFiles(pack);
  if (unbrought.length > 0) return { ok: false, defects: unbrought };
  const sealed = sealDefects(pack);
  if (sealed.length > 0) return { ok: false, defects: sealed };
  const manifest = await json(call, pack, replayed.manifestSha256, Manifest);
  const documents = await json(call, pack, replayed.documentsSha256, Documents);
  const record = await json(call, pack, replayed.recordSha256, z.looseObject({}));
  const facts = replayed.factsSha256 === null ? undefined : await json(call, pack, replayed.factsSha256, FactsForm);
  if (!manifest || !documents || !record || (replayed.factsSha256 !== null && !facts))
    return { ok: false, defects: [wrong('FILE_NOT_READABLE', pack, 'a file of it is not of its form')] };
  const defects = [
    ...manifestDefects(pack, manifest),
    ...(await documentDefects(call, pack, manifest, documents)),
    ...shownDefects(call, pack, documents),
  ];
  if (defects.length > 0) return { ok: false, defects };
  const assessed = await call.pipeline.assess(record, replayed.issuedAt);
  const content = { manifest, documents, assessed: assessed.ok ? assessed.assessed : undefined };
  const inFacts = facts ? factsDefects(pack, facts, content) : [];
  if (inFacts.length > 0) return { ok: false, defects: inFacts };
  const summary = facts?.summary ?? summaryOfFirstForm(pack, content);
  const attachments = manifest.attachments.map((file) => file.sha256).filter((file) => staged.has(file));
  return { ok: true, summary, digests: [...filesOf(replayed), ...attachments] };
}

const filesOf = (pack: ReplayedPack): string[] =>
  [pack.pdfSha256, pack.manifestSha256, pack.recordSha256, pack.documentsSha256, pack.factsSha256].filter(
    (file) => file !== null,
  );

const wrong = (code: string, { replayed }: PackToRestore, what: string): Defect =>
  defect(code, '', `${replayed.pack}: ${what}`);

function unbroughtFiles(pack: PackToRestore): Defect[] {
  const { pdfSha256, manifestSha256, recordSha256, documentsSha256, factsSha256 } = pack.replayed;
  const files = { pdfSha256, manifestSha256, recordSha256, documentsSha256, factsSha256 };
  return Object.entries(files)
    .filter(([, file]) => file !== null && !pack.staged.has(file))
    .map(([key, file]) => defect('BLOB_MISSING', '', `${key} of ${pack.replayed.pack} was not brought: ${file}`));
}

/** Checks that its PDF is sealed as this pack of this workshop. */
function sealDefects(pack: PackToRestore): Defect[] {
  const { name, replayed, staged } = pack;
  const { pdfSha256, manifestSha256, recordSha256, issuedAt } = replayed;
  const seal = staged.get(pdfSha256);
  if (!seal) return [wrong('SEAL_UNPROVED', pack, `it is not sealed by a published key of ${name.workshop}`)];
  if (seal.workshop !== name.workshop)
    return [wrong('SEAL_OF_ANOTHER', pack, `it was sealed by ${seal.workshop}, and this is ${name.workshop}`)];
  const sealed = { pack: replayed.pack, manifestSha256, recordSha256, issuedAt };
  const isSame = Object.entries(sealed).every(([key, value]) => seal[key as keyof typeof sealed] === value);
  return isSame ? [] : [wrong('SEAL_DIFFERS', pack, 'the chain says something else of it than its seal')];
}

/** Checks that the manifest, which is sealed, matches the chain. */
function manifestDefects(pack: PackToRestore, manifest: Manifest): Defect[] {
  const { name, replayed, previousSha256 } = pack;
  const said = {
    pack: manifest.pack,
    issue: manifest.issue,
    registration: manifest.registration.toUpperCase(),
    visit: manifest.visit,
    issuedAt: manifest.issuedAt,
    supersedes: manifest.supersedes,
    record: manifest.record.sha256,
    previous: manifest.previous?.manifestSha256 ?? null,
    facts: manifest.facts?.sha256 ?? null,
  };
  const held: typeof said = {
    pack: replayed.pack,
    issue: String(replayed.issue),
    registration: name.registration,
    visit: replayed.visit,
    issuedAt: replayed.issuedAt,
    supersedes: replayed.supersedes,
    record: replayed.recordSha256,
    previous: previousSha256,
    facts: replayed.factsSha256,
  };
  return (Object.keys(held) as (keyof typeof held)[])
    .filter((key) => said[key] !== held[key])
    .map((key) => wrong('MANIFEST_DIFFERS', pack, `its manifest names another ${key} than the chain`));
}

/** Checks that every document is the one in the manifest, and has only our own markup. */
async function documentDefects(call: Call, pack: PackToRestore, manifest: Manifest, documents: Documents) {
  const named = new Map(manifest.documents.map((document) => [document.id, document.sha256]));
  const ids = new Set([...named.keys(), ...documents.map(({ id }) => id)]);
  const isTwice = documents.length !== new Set(documents.map(({ id }) => id)).size;
  const defects: Defect[] = isTwice ? [wrong('DOCUMENT_DIFFERS', pack, 'a document is there twice')] : [];
  for (const id of ids) {
    const html = documents.find((document) => document.id === id)?.html;
    const isNamed = html !== undefined && (await sha256(html)) === named.get(id);
    if (!isNamed) defects.push(wrong('DOCUMENT_DIFFERS', pack, `${id} is not the document that the manifest names`));
    else if (!call.pipeline.isOwnMarkup(html))
      defects.push(wrong('DOCUMENT_FOREIGN', pack, `${id} has markup that no template of ours makes`));
  }
  return defects;
}

/** Checks that every file that a document shows, or that follows it, is staged: a digest alone gives no access. */
function shownDefects(call: Call, pack: PackToRestore, documents: Documents): Defect[] {
  const pictures = documents.flatMap(({ html }) => call.pipeline.picturesShown(html));
  const appended = documents.flatMap(({ appends }) => (appends === undefined ? [] : [appends]));
  const shown = new Set([...pictures, ...appended]);
  return [...shown]
    .filter((file) => !pack.staged.has(file))
    .map((file) => defect('BLOB_MISSING', '', `A file that ${pack.replayed.pack} shows was not brought: ${file}`));
}

/** Content of the files of a pack; `assessed` is undefined if its record cannot be read any more. */
interface SealedContent {
  manifest: Manifest;
  documents: Documents;
  assessed: Assessed | undefined;
}

/** Checks that the facts match chain, manifest and record. A seal is not enough: the sender may have sealed them. */
function factsDefects({ name, replayed, staged }: PackToRestore, facts: FactsForm, sealed: SealedContent): Defect[] {
  const { summary, sealedBy, owner } = facts;
  const { pack, number, issue, visit, issuedAt, supersedes } = replayed;
  const { manifest, assessed } = sealed;
  const { kid = sealedBy?.kid } = staged.get(replayed.pdfSha256) ?? {};
  const schedule = assessed?.results.schedule;
  const held = {
    registration: name.registration,
    ...{ pack, number, issue, visit, issuedAt, supersedes },
    releasedBy: manifest.release.name,
    regime: manifest.regime.id,
    ...(assessed && { emptyMassKg: asGiven(summary.emptyMassKg, schedule?.massKg) }),
    ...(assessed && { emptyArmMm: asGiven(summary.emptyArmMm, schedule?.armMm) }),
  };
  const said = { ...summary, registration: summary.registration.toUpperCase() };
  const differing = Object.entries(held).filter(([key, value]) => said[key as keyof typeof held] !== value);
  const defects = differing.map(([key, value]) =>
    defect('FACTS_DIFFER', '', `${pack}: its facts name another ${key} than chain, manifest and record: ${value}`),
  );
  const isOurs = sealedBy === null || (sealedBy.id === name.workshop && sealedBy.kid === kid);
  if (!isOurs)
    defects.push(defect('FACTS_DIFFER', '', `${pack}: its facts name another workshop or key than its seal`));
  const { massKg } = owner.loading?.empty ?? {};
  if (massKg !== undefined && asGiven(summary.emptyMassKg, massKg) !== summary.emptyMassKg)
    defects.push(defect('FACTS_DIFFER', '', `${pack}: its facts name two empty masses`));
  return defects;
}

/**
 * Returns the summary of a pack of the first form, which did not seal it: calculated from manifest, documents and
 * record. The figures of the export are used if they agree with the record, so that an export stays the same to the
 * last digit.
 */
function summaryOfFirstForm(
  { replayed, given }: PackToRestore,
  { manifest, documents, assessed }: SealedContent,
): PackSummary {
  const { pack, number, issue, visit, issuedAt, supersedes } = replayed;
  const codesIn = (id: string): number =>
    documents.find((document) => document.id === id)?.html.match(/<small>[A-Z][A-Z0-9_]*<\/small>/g)?.length ?? 0;
  return {
    registration: assessed?.record.aircraft.registration ?? given.registration,
    pack,
    number,
    issue,
    visit,
    issuedAt,
    releasedBy: manifest.release.name,
    regime: manifest.regime.id,
    emptyMassKg: asGiven(given.emptyMassKg, assessed?.results.schedule?.massKg),
    emptyArmMm: asGiven(given.emptyArmMm, assessed?.results.schedule?.armMm),
    supersedes,
    // A released pack lists its cautions on the cover and its notes in the record of issue, each with its code.
    findings: { cautions: codesIn('cover'), notes: codesIn('record-of-issue') },
  };
}

/** Max. relative difference between two ways of summing. */
const ROUNDING = 1e-9;

function asGiven(given: number | null, computed: number | undefined): number | null {
  if (computed === undefined) return null;
  return given !== null && Math.abs(given - computed) <= ROUNDING * Math.abs(computed) ? given : computed;
}

/** Reads a staged file of this form; undefined if it is missing or of another form. */
async function json<Schema extends z.ZodType>(
  call: Call,
  { name }: PackToRestore,
  file: string,
  schema: Schema,
): Promise<z.infer<Schema> | undefined> {
  const bytes = orUnavailable(await call.world.archive.stagedBlob(name, file));
  try {
    const read = schema.safeParse(JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes ?? undefined)));
    return read.success ? read.data : undefined;
  } catch {
    return undefined;
  }
}
