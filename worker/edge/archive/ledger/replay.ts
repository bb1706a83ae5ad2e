import * as z from 'zod';
import { canonicalJson } from '../../../core/pack/canonical-json.ts';
import { IDENTIFIER, SHA256 } from '../../../core/patterns.ts';
import { BODY_FORM, brokenEntry } from './chain.ts';
import type { ChainEntry, KeptPack, VisitState } from './ledger-calls.ts';

// A restoration brings only what the chain does not contain, and both it and an exported folder are compared with
// this replay. A new kind of entry needs a step here. Entries of links stay in the chain; the links themselves do
// not move.

/** Facts about a pack in the chain; only the summary for lists is not in it. */
export type ReplayedPack = Omit<KeptPack, 'summary' | 'isShared' | 'isRestored'> & {
  pack: string;
  number: number;
  issue: number;
  visit: string;
  issuedAt: string;
  supersedes: string | null;
};

/** Content that a ledger must have according to its chain. */
export interface Replay {
  visits: Map<string, VisitState>;
  /** In the order of sealing. */
  packs: Map<string, ReplayedPack>;
}

/** Entry that contradicts the entries before it. */
export interface FalseEntry {
  seq: number;
  why: string;
}

export type ReplayOutcome = { ok: true; replay: Replay } | { ok: false; fault: FalseEntry };

const digest = z.string().regex(SHA256);
const name = z.string().min(1).max(400);

/** Bodies of entries before they named the key. */
const FIRST_BODIES = {
  'visit-kept': z.strictObject({
    visit: z.string().regex(IDENTIFIER),
    version: z.int(),
    recordSha256: digest,
  }),
  'pack-sealed': z.strictObject({
    pack: name,
    visit: name,
    version: z.int(),
    manifestSha256: digest,
    pdfSha256: digest,
    recordSha256: digest,
    documentsSha256: digest,
  }),
  'pack-withdrawn': z.strictObject({ pack: name, by: name, reason: name }),
  'link-made': z.strictObject({ link: name, number: z.int(), audience: name, expiresAt: name }),
  'link-revoked': z.strictObject({ link: name }),
} as const;

/** Members of every later body. Unknown members are accepted: a later form may add them. */
const BY = { form: z.literal(BODY_FORM), key: name, person: name.nullable() };

const NEXT_BODIES = {
  'visit-kept': z.looseObject({ ...FIRST_BODIES['visit-kept'].shape, ...BY }),
  'pack-sealed': z.looseObject({ ...FIRST_BODIES['pack-sealed'].shape, factsSha256: digest.nullable(), ...BY }),
  'pack-withdrawn': z.looseObject({ ...FIRST_BODIES['pack-withdrawn'].shape, ...BY }),
  'link-made': z.looseObject({ ...FIRST_BODIES['link-made'].shape, ...BY }),
  'link-revoked': z.looseObject({ ...FIRST_BODIES['link-revoked'].shape, ...BY }),
} as const;

type Bodies = { [Kind in keyof typeof FIRST_BODIES]: z.infer<(typeof FIRST_BODIES)[Kind]> } & {
  'pack-sealed': { factsSha256?: string | null };
};

/** Timestamp format of the service. */
const TIMESTAMP = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}\.\d{3}Z$/;

/** State during the replay. */
interface Course extends Replay {
  registration: string;
  links: Set<string>;
}

/**
 * Replays a chain: returns the content that a ledger must have. Every entry must follow from the one before by digest,
 * and be possible after all before.
 *
 * @param registration registration of the aircraft, as in the names of its packs
 */
export async function replay(registration: string, entries: readonly ChainEntry[]): Promise<ReplayOutcome> {
  const misplaced = entries.findIndex(({ seq }, index) => seq !== index + 1);
  if (misplaced >= 0) return fault(misplaced + 1, 'there is another entry in its place');
  const broken = await brokenEntry(entries);
  if (broken) return fault(broken.seq, 'it does not follow from the entry before, or was altered');
  const course: Course = { registration, visits: new Map(), packs: new Map(), links: new Set() };
  for (const entry of entries) {
    const why = taken(course, entry);
    if (why !== undefined) return fault(entry.seq, why);
  }
  return { ok: true, replay: { visits: course.visits, packs: course.packs } };
}

const fault = (seq: number, why: string): ReplayOutcome => ({ ok: false, fault: { seq, why } });

/** Adds an entry; returns the reason if it is not possible. */
function taken(course: Course, { kind, at, body }: ChainEntry): string | undefined {
  if (!TIMESTAMP.test(at) || Number.isNaN(Date.parse(at))) return 'its timestamp is not valid';
  const value = parsed(body);
  const read = (hasForm(value) ? NEXT_BODIES : FIRST_BODIES)[kind].safeParse(value);
  if (!read.success || canonicalJson(value) !== body) return 'its body is not of its kind';
  if (kind === 'visit-kept') return visitKept(course, read.data as Bodies['visit-kept'], at);
  if (kind === 'pack-sealed') return packSealed(course, read.data as Bodies['pack-sealed'], at);
  if (kind === 'pack-withdrawn') return packWithdrawn(course, read.data as Bodies['pack-withdrawn'], at);
  if (kind === 'link-made') return linkMade(course, read.data as Bodies['link-made']);
  return course.links.has((read.data as Bodies['link-revoked']).link) ? undefined : 'no such link was made';
}

const hasForm = (value: unknown): boolean => typeof value === 'object' && value !== null && 'form' in value;

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function visitKept({ visits }: Course, body: Bodies['visit-kept'], at: string): string | undefined {
  const before = visits.get(body.visit);
  if (body.version !== (before?.version ?? 0) + 1) return `version ${body.version} does not follow`;
  const { visit, version, recordSha256 } = body;
  visits.set(visit, { visit, version, recordSha256, updatedAt: at, state: 'working', pack: before?.pack ?? null });
  return undefined;
}

/** Adds a sealed pack. Its place follows from those before it, as when it was sealed. */
function packSealed({ registration, visits, packs }: Course, body: Bodies['pack-sealed'], at: string) {
  const { pack, visit: name, version, manifestSha256, pdfSha256, recordSha256, documentsSha256 } = body;
  const digests = { manifestSha256, pdfSha256, recordSha256, documentsSha256, factsSha256: body.factsSha256 ?? null };
  const visit = visits.get(name);
  if (visit?.version !== version || visit.state === 'released')
    return 'the visit was not a working record of this version';
  const superseded = visit.pack === null ? undefined : packs.get(visit.pack);
  const number = superseded?.number ?? Math.max(0, ...[...packs.values()].map((other) => other.number)) + 1;
  const issue = (superseded?.issue ?? 0) + 1;
  if (pack !== `${registration}-P${number}-${issue}`) return `${pack} is not the next pack`;
  if (superseded) superseded.supersededBy = pack;
  const previous = [...packs.keys()].at(-1) ?? null;
  const supersedes = superseded?.pack ?? null;
  const standing = { previous, supersededBy: null, withdrawal: null, supersedes };
  packs.set(pack, { pack, number, issue, visit: name, issuedAt: at, ...digests, ...standing });
  visits.set(name, { ...visit, state: 'released', pack });
  return undefined;
}

function packWithdrawn({ packs }: Course, { pack, by, reason }: Bodies['pack-withdrawn'], at: string) {
  const withdrawn = packs.get(pack);
  if (!withdrawn || withdrawn.withdrawal) return 'the pack does not exist, or was withdrawn before';
  withdrawn.withdrawal = { at, by, reason };
  return undefined;
}

function linkMade({ packs, links }: Course, { link, number }: Bodies['link-made']) {
  if (![...packs.values()].some((pack) => pack.number === number)) return 'no such pack was sealed';
  links.add(link);
  return undefined;
}
