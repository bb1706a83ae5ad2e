import * as z from 'zod';
import type { LedgerName, SealFacts } from '../archive/archive.ts';
import type { KeptPack, KeptVisit, Restoration } from '../archive/ledger/ledger-calls.ts';
import { isDigestOfRecord } from '../archive/ledger/record-digest.ts';
import { type ReplayedPack, replay } from '../archive/ledger/replay.ts';
import { LIMITS } from '../limits.ts';
import { type Defect, Refusal } from './problem.ts';
import { defect } from './request-body.ts';
import { ChainEntry, PackSummary } from './schemas.ts';

const strict = <Shape extends z.ZodRawShape>(schema: z.ZodObject<Shape>) => z.strictObject(schema.shape);

/** Amendments can make a record longer than a body may be; a row of the ledger has its own bound. */
const fitsRow = (record: string): boolean => new TextEncoder().encode(record).length <= LIMITS.keptRecordBytes;

/** A ledger as an export holds it. Everything else about visits and packs follows from the chain. */
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

type Staged = ReadonlyMap<string, SealFacts | null>;

/**
 * The ledger to be written, once all of it holds together.
 *
 * @throws Refusal 422 with every defect
 */
export async function restorationFrom(name: LedgerName, body: LedgerRequest, staged: Staged): Promise<Restoration> {
  const { workshop, registration } = name;
  const outcome = await replay(registration, body.entries);
  if (!outcome.ok) {
    const { seq, why } = outcome.fault;
    throw notValid([defect('CHAIN_BROKEN', `/entries/${seq - 1}`, `Entry ${seq} of the chain cannot stand: ${why}`)]);
  }
  const { visits, packs } = outcome.replay;
  const defects = [
    ...(await visitDefects(body, [...visits.values()])),
    ...[...packs.values()].flatMap((pack) => packDefects(name, pack, body, staged)),
    ...strayPacks(body, packs),
  ];
  if (defects.length > 0) throw notValid(defects.slice(0, LIMITS.recordIssues));
  const records = new Map(body.visits.map(({ visit, record }) => [visit, record]));
  const keptVisits = [...visits.values()].map(
    (state): KeptVisit => ({ ...state, record: records.get(state.visit) ?? '' }),
  );
  const keptPacks = [...packs.values()].map((pack) => keptPack(pack, body));
  return { workshop, entries: body.entries, visits: keptVisits, packs: keptPacks };
}

const notValid = (findings: Defect[]) =>
  new Refusal('request-not-valid', `${findings.length} defects; nothing was restored`, { findings });

/** Each visit of the chain has one record, of the digest that the chain names; there is no other. */
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

function packDefects(name: LedgerName, pack: ReplayedPack, { packs }: LedgerRequest, staged: Staged): Defect[] {
  const at = packs.findIndex((summary) => summary.pack === pack.pack);
  const summary = packs[at];
  if (!summary) return [defect('PACK_MISSING', '/packs', `There is no summary of ${pack.pack}`)];
  const { number, issue, visit, issuedAt, supersedes } = pack;
  const expected = { registration: name.registration, number, issue, visit, issuedAt, supersedes };
  const differing = Object.entries(expected).filter(([key, value]) => {
    const given = summary[key as keyof typeof expected];
    return (key === 'registration' ? String(given).toUpperCase() : given) !== value;
  });
  return [
    ...differing.map(([key, value]) =>
      defect('SUMMARY_DIFFERS', `/packs/${at}/${key}`, `${key} of ${pack.pack} is ${value} by the chain`),
    ),
    ...blobDefects(name, pack, staged),
  ];
}

/** Every file of the pack was brought, and its PDF is sealed as this pack of this workshop. */
function blobDefects({ workshop }: LedgerName, pack: ReplayedPack, staged: Staged): Defect[] {
  const { pdfSha256, manifestSha256, recordSha256, documentsSha256, issuedAt } = pack;
  const missing = Object.entries({ pdfSha256, manifestSha256, recordSha256, documentsSha256 }).filter(
    ([, digest]) => !staged.has(digest),
  );
  if (missing.length > 0)
    return missing.map(([key, digest]) =>
      defect('BLOB_MISSING', '', `${key} of ${pack.pack} was not brought: ${digest}`),
    );
  const seal = staged.get(pdfSha256);
  if (!seal) return [defect('SEAL_UNPROVED', '', `${pack.pack} is not sealed by a published key of ${workshop}`)];
  if (seal.workshop !== workshop)
    return [defect('SEAL_OF_ANOTHER', '', `${pack.pack} was sealed by ${seal.workshop}, and this is ${workshop}`)];
  const sealed = { pack: pack.pack, manifestSha256, recordSha256, issuedAt };
  const isSame = Object.entries(sealed).every(([key, value]) => seal[key as keyof typeof sealed] === value);
  return isSame ? [] : [defect('SEAL_DIFFERS', '', `The chain says something else of ${pack.pack} than its seal`)];
}

function strayPacks({ packs }: LedgerRequest, known: ReadonlyMap<string, ReplayedPack>): Defect[] {
  const names = packs.map(({ pack }) => pack);
  return names.flatMap((pack, at) =>
    known.has(pack) && names.indexOf(pack) === at
      ? []
      : [defect('PACK_UNKNOWN', `/packs/${at}`, `${pack} is not in the chain, or is here twice`)],
  );
}

function keptPack(pack: ReplayedPack, { packs }: LedgerRequest): KeptPack {
  const summary = packs.find((given) => given.pack === pack.pack);
  if (!summary) throw new Error(`Cannot restore ${pack.pack}: its summary must be there`);
  const { manifestSha256, pdfSha256, recordSha256, documentsSha256, previous, supersededBy, withdrawal } = pack;
  return { summary, manifestSha256, pdfSha256, recordSha256, documentsSha256, previous, supersededBy, withdrawal };
}
