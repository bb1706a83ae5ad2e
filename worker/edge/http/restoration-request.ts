import * as z from 'zod';
import { LIMITS } from '../../core/limits.ts';
import { PackSummary } from '../../core/pack/summary.ts';
import type { LedgerName } from '../archive/archive.ts';
import type { KeptPack, KeptVisit, Restoration } from '../archive/ledger/ledger-calls.ts';
import { isDigestOfRecord } from '../archive/ledger/record-digest.ts';
import { type ReplayedPack, replay } from '../archive/ledger/replay.ts';
import { type Defect, HttpProblem } from './problem.ts';
import { defect } from './request-body.ts';
import { restoredPack, type Staged } from './restored-pack.ts';
import type { Call } from './route.ts';
import { ChainEntry } from './schemas.ts';

const strict = <Shape extends z.ZodRawShape>(schema: z.ZodObject<Shape>) => z.strictObject(schema.shape);

/**
 * Whether a record fits a row of the ledger, which has its own bound: amendments can make a record longer than a body
 * may be.
 */
const fitsRow = (record: string): boolean => new TextEncoder().encode(record).length <= LIMITS.keptRecordBytes;

/** Ledger as exported. Everything else about visits and packs follows from the chain. */
export const LedgerRequest = z
  .strictObject({
    entries: z.array(strict(ChainEntry)).min(1).max(LIMITS.restoredEntries),
    visits: z
      .array(z.strictObject({ visit: z.string(), record: z.string().refine(fitsRow, 'It is too long to be kept') }))
      .meta({ description: 'Every visit with its record, as text, in the form that was kept last' }),
    packs: z.array(strict(PackSummary)).max(LIMITS.restoredPacks).meta({ description: 'What lists show of each pack' }),
  })
  .meta({ title: 'Ledger to restore' });
export type LedgerRequest = z.infer<typeof LedgerRequest>;

/** Ledger to be written, with its files. */
export interface CheckedRestoration {
  restoration: Restoration;
  /** Digests of all staged files of its packs. */
  digests: string[];
}

/**
 * Returns the ledger to be written, if all of it is consistent.
 *
 * @throws HttpProblem 422 with every defect
 */
export async function restorationFrom(
  call: Call,
  name: LedgerName,
  body: LedgerRequest,
  staged: Staged,
): Promise<CheckedRestoration> {
  const { workshop, registration } = name;
  const outcome = await replay(registration, body.entries);
  if (!outcome.ok) {
    const { seq, why } = outcome.fault;
    throw notValid([defect('CHAIN_BROKEN', `/entries/${seq - 1}`, `Entry ${seq} of the chain is not valid: ${why}`)]);
  }
  const { visits, packs } = outcome.replay;
  const defects = [
    ...(await visitDefects(body, [...visits.values()])),
    ...[...packs.values()].flatMap((pack) => summaryDefects(name, pack, body)),
    ...strayPacks(body, packs),
  ];
  if (defects.length > 0) throw notValid(defects);
  const keptPacks: KeptPack[] = [];
  const digests = new Set<string>();
  for (const replayed of packs.values()) {
    const given = body.packs.find(({ pack }) => pack === replayed.pack);
    const previousSha256 = packs.get(replayed.previous ?? '')?.manifestSha256 ?? null;
    const outcome = given && (await restoredPack(call, { name, replayed, previousSha256, given, staged }));
    if (outcome?.ok) keptPacks.push(keptPack(replayed, outcome.summary));
    if (outcome?.ok) for (const digest of outcome.digests) digests.add(digest);
    if (outcome && !outcome.ok) defects.push(...outcome.defects);
  }
  if (defects.length > 0) throw notValid(defects);
  const records = new Map(body.visits.map(({ visit, record }) => [visit, record]));
  const keptVisits = [...visits.values()].map(
    (state): KeptVisit => ({ ...state, record: records.get(state.visit) ?? '' }),
  );
  const restoration = { workshop, entries: body.entries, visits: keptVisits, packs: keptPacks };
  return { restoration, digests: [...digests] };
}

const notValid = (defects: Defect[]) =>
  new HttpProblem('request-not-valid', `${defects.length} defects; nothing was restored`, {
    findings: defects.slice(0, LIMITS.recordIssues),
  });

/** Checks that each visit of the chain has one record, with the digest in the chain, and that there are no others. */
async function visitDefects({ visits }: LedgerRequest, states: { visit: string; recordSha256: string }[]) {
  const defects: Defect[] = [];
  for (const { visit, recordSha256 } of states) {
    const at = visits.findIndex((given) => given.visit === visit);
    const record = visits[at]?.record;
    if (record === undefined) defects.push(defect('VISIT_MISSING', '/visits', `There is no record of ${visit}`));
    else if (!(await isDigestOfRecord(record, recordSha256)))
      defects.push(
        defect('RECORD_DIFFERS', `/visits/${at}/record`, `The record of ${visit} is not ${recordSha256} of the chain`),
      );
  }
  if (visits.length > states.length && defects.length === 0)
    defects.push(defect('VISIT_UNKNOWN', '/visits', 'There are more visits than the chain knows'));
  return defects;
}

/** Checks that the summaries in the export do not contradict the chain. Anything they add is not trusted. */
function summaryDefects(name: LedgerName, pack: ReplayedPack, { packs }: LedgerRequest): Defect[] {
  const at = packs.findIndex((summary) => summary.pack === pack.pack);
  const summary = packs[at];
  if (!summary) return [defect('PACK_MISSING', '/packs', `There is no summary of ${pack.pack}`)];
  const { number, issue, visit, issuedAt, supersedes } = pack;
  const expected = { registration: name.registration, number, issue, visit, issuedAt, supersedes };
  const differing = Object.entries(expected).filter(([key, value]) => {
    const given = summary[key as keyof typeof expected];
    return (key === 'registration' ? String(given).toUpperCase() : given) !== value;
  });
  return differing.map(([key, value]) =>
    defect('SUMMARY_DIFFERS', `/packs/${at}/${key}`, `${key} of ${pack.pack} is ${value} by the chain`),
  );
}

function strayPacks({ packs }: LedgerRequest, known: ReadonlyMap<string, ReplayedPack>): Defect[] {
  const names = packs.map(({ pack }) => pack);
  return names.flatMap((pack, at) =>
    known.has(pack) && names.indexOf(pack) === at
      ? []
      : [defect('PACK_UNKNOWN', `/packs/${at}`, `${pack} is not in the chain, or is here twice`)],
  );
}

function keptPack(pack: ReplayedPack, summary: KeptPack['summary']): KeptPack {
  const { manifestSha256, pdfSha256, recordSha256, documentsSha256, factsSha256 } = pack;
  const { previous, supersededBy, withdrawal } = pack;
  const digests = { manifestSha256, pdfSha256, recordSha256, documentsSha256, factsSha256 };
  return { summary, ...digests, previous, supersededBy, withdrawal, isShared: false, isRestored: true };
}
