import {
  allItems,
  type DueList,
  everyItem,
  ifThere,
  type Pack,
  type Slipmark,
  type VisitRecord,
} from '../../../worker/client/client.ts';
import { packCountedFrom } from '../shop/pack-standing.ts';
import type { PageFiles, Said } from '../thread/protocol.ts';
import { dueByRecord } from './due-by-record.ts';

/** Which visit is inspected. */
export interface VisitName {
  registration: string;
  visit: string;
}

/** A finding as the service answers it. */
export type Point = Said;

/** A visit as it stood when it was read: everything here belongs to one form of the record. */
export interface ReadVisit {
  record: VisitRecord;
  /** Tag of the record: what an amendment names. */
  recordTag: string;
  /** Tag of the assessment: what a release names. */
  assessmentTag: string;
  isReleasable: boolean;
  /** The pack that was sealed from this very form, where one was. */
  released: Pack | undefined;
  points: Point[];
  documents: { id: string; title: string; html: string }[];
  /** All packs of the aircraft, the newest first. */
  packs: Pack[];
  /** The pack that stood before this visit, and the record that it was sealed from. */
  before: { pack: Pack; record: unknown } | undefined;
  /** What stands open on the aircraft, with the time left by this record; undefined where it is released or that is not known. */
  open: DueList | undefined;
  files: PageFiles;
}

/** Reads everything that an inspector looks at; again where the record moved in between. */
export async function readVisit(client: Slipmark, name: VisitName): Promise<ReadVisit> {
  for (;;) {
    const visit = await client.getVisit(name);
    const assessment = await client.getAssessment(name);
    const drafts = await client.getDraftDocuments(name);
    const releasedAs = await packNameOf(client, name);
    const packs = await allItems(client.listAircraftPacks, { registration: name.registration });
    const released = packs.find(({ pack }) => pack === releasedAs);
    const isOneForm = assessment.etag === drafts.etag && (await client.getVisit(name)).etag === visit.etag;
    if (!isOneForm) continue;
    return {
      record: visit.body,
      recordTag: visit.etag ?? '',
      assessmentTag: assessment.etag ?? '',
      isReleasable: assessment.body.isReleasable,
      released,
      points: assessment.body.findings as unknown as Point[],
      documents: drafts.body.items,
      packs,
      before: await packBefore(client, name, packs),
      open: released || packs.length === 0 ? undefined : await standsOpen(client, name, visit.body),
      files: await photographs(client, visit.body),
    };
  }
}

/** The pack that the visit was released as, unless it was amended since. */
async function packNameOf(client: Slipmark, { registration, visit }: VisitName): Promise<string | undefined> {
  for await (const kept of everyItem(client.listVisits, { registration })) {
    if (kept.visit === visit && kept.state === 'released') return kept.pack ?? undefined;
  }
  return undefined;
}

/** A visit that was released already is held against what stood before it, not against what came later. */
async function packBefore(
  client: Slipmark,
  { visit }: VisitName,
  packs: readonly Pack[],
): Promise<ReadVisit['before']> {
  const own = packs.find((pack) => pack.visit === visit)?.number ?? Number.POSITIVE_INFINITY;
  const pack = packCountedFrom(packs.filter(({ number }) => number < own));
  return pack && { pack, record: await recordOf(client, pack.pack) };
}

async function standsOpen(
  client: Slipmark,
  { registration }: VisitName,
  record: VisitRecord,
): Promise<ReadVisit['open']> {
  const due = await ifThere(client.getDue({ registration }));
  return due && dueByRecord(due.body, record, new Date().toISOString());
}

async function recordOf(client: Slipmark, pack: string): Promise<VisitRecord> {
  const { bytes } = await client.getPackRecord({ pack });
  return JSON.parse(new TextDecoder().decode(bytes)) as VisitRecord;
}

async function photographs(client: Slipmark, { attachments = [] }: VisitRecord): Promise<PageFiles> {
  const shown = attachments.filter(({ kind }) => kind === 'photograph');
  const files = shown.map(async ({ sha256 }) => {
    const file = await ifThere(client.getAttachmentFile({ sha256 }));
    return file ? [[sha256, file.bytes] as const] : [];
  });
  return Object.fromEntries((await Promise.all(files)).flat());
}
