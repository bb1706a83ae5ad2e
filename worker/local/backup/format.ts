import * as z from 'zod';
import { PackSummary } from '../../core/pack/summary.ts';
import { IDENTIFIER, PACK_NAME, REGISTRATION, SHA256, WORKSHOP } from '../../core/patterns.ts';
import { SCOPES } from '../../core/record/scopes.ts';
import { CHAIN_KINDS, type ChainEntry } from '../../edge/archive/ledger/ledger-calls.ts';

/** Format of an exported folder. Readers check everything in it: a folder may come from anywhere. */
export const FORMAT = 'slipmark-export/1';

const digest = z.string().regex(SHA256);
const registration = z.string().regex(REGISTRATION);
const packName = z.string().regex(PACK_NAME);
const visitName = z.string().regex(IDENTIFIER);

/** Photograph or document that a record names; `file` is null if it was never uploaded, or was cleared. */
const ExportedFile = z.strictObject({
  sha256: digest,
  title: z.string(),
  file: z
    .string()
    .regex(/^attachments\/[0-9a-f]{64}\.(jpg|png|pdf)$/)
    .nullable(),
});
export type ExportedFile = z.infer<typeof ExportedFile>;

const ExportedVisit = z.strictObject({
  visit: visitName,
  version: z.int(),
  recordSha256: digest,
  updatedAt: z.string(),
  state: z.enum(['working', 'released']),
  pack: packName.nullable(),
  attachments: z.array(ExportedFile),
});
export type ExportedVisit = z.infer<typeof ExportedVisit>;

const Summary = z.strictObject({
  ...PackSummary.shape,
  pack: packName,
  visit: visitName,
  supersedes: packName.nullable(),
  findings: z.strictObject(PackSummary.shape.findings.shape),
});

const Entry = z.strictObject({
  seq: z.int(),
  at: z.string(),
  kind: z.enum(CHAIN_KINDS),
  body: z.string(),
  previous: digest,
  digest,
}) satisfies z.ZodType<ChainEntry>;

const ExportedPack = z.strictObject({
  summary: Summary,
  supersededBy: packName.nullable(),
  withdrawal: z.strictObject({ at: z.string(), by: z.string(), reason: z.string() }).nullable(),
  attachments: z.array(ExportedFile),
});
export type ExportedPack = z.infer<typeof ExportedPack>;

/** `workshop.json`: the workshop and its aircraft. */
export const WorkshopFile = z.strictObject({
  format: z.literal(FORMAT),
  workshop: z.string().regex(WORKSHOP),
  aircraft: z.array(registration),
});
export type WorkshopFile = z.infer<typeof WorkshopFile>;

/** `aircraft.json`: visits and packs, oldest pack first. Data that the chain has too is compared with the chain. */
export const AircraftFile = z.strictObject({
  format: z.literal(FORMAT),
  registration,
  visits: z.array(ExportedVisit),
  packs: z.array(ExportedPack),
});
export type AircraftFile = z.infer<typeof AircraftFile>;

/** `ledger.json`: the whole chain. */
export const LedgerFile = z.strictObject({
  format: z.literal(FORMAT),
  registration,
  entries: z.array(Entry),
});
export type LedgerFile = z.infer<typeof LedgerFile>;

/** Paths in the folder, with slashes. */
export const PLACES = {
  workshop: 'workshop.json',
  keys: 'keys.json',
  people: 'people.json',
  sums: 'SHA256SUMS',
  style: 'style.css',
  aircraft: (name: string) => `aircraft/${name}`,
  visit: (aircraft: string, visit: string) => `aircraft/${aircraft}/visits/${visit}.json`,
  pack: (aircraft: string, pack: string) => `aircraft/${aircraft}/packs/${pack}`,
} as const;

/** Files of a pack, with the digest in the chain for each. Packs sealed before facts were kept have none. */
const PACK_FILES = {
  'pack.pdf': 'pdfSha256',
  'record.json': 'recordSha256',
  'manifest.json': 'manifestSha256',
  'documents.json': 'documentsSha256',
  'facts.json': 'factsSha256',
} as const;
export type PackFile = keyof typeof PACK_FILES;

/** Returns the files of a pack, with their digests. */
export function filesOfPack(digests: { [Digest in (typeof PACK_FILES)[PackFile]]?: string | null }) {
  return (Object.keys(PACK_FILES) as PackFile[]).flatMap((name): { name: PackFile; sha256: string }[] => {
    const sha256 = digests[PACK_FILES[name]];
    return sha256 ? [{ name, sha256 }] : [];
  });
}

/** `people.json`: the table of people of the workshop, if it has any. */
export const PeopleFile = z.strictObject({
  format: z.literal(FORMAT),
  people: z.array(
    z.strictObject({
      id: z.string().regex(IDENTIFIER),
      name: z.string(),
      capacity: z.string(),
      licence: z.string().nullable(),
      scope: z.array(z.enum(SCOPES)),
      from: z.string().nullable(),
      until: z.string().nullable(),
    }),
  ),
});
export type PeopleFile = z.infer<typeof PeopleFile>;
