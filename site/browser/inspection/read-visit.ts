import {
  allItems,
  type DueList,
  everyItem,
  ifThere,
  type Pack,
  type Slipmark,
  type VisitRecord,
} from '../../../worker/client/client.ts';
import { upgrade } from '../../../worker/core/record/upgrades.ts';
import { recordOfPack } from '../record-of-pack.ts';
import { withoutRepeats } from '../sheet/findings-list.ts';
import { packCountedFrom } from '../shop/pack-standing.ts';
import type { PageFiles, Said } from '../thread/protocol.ts';
import { dueByRecord } from './due-by-record.ts';

/** Registration and number of the inspected visit. */
export interface VisitName {
  registration: string;
  visit: string;
}

/** Finding, as returned by the service. */
export type Point = Said;

/** Visit as read: everything in it belongs to one version of the record. */
export interface ReadVisit {
  /** In the present version, whole. */
  record: VisitRecord;
  /** Record as posted: target of the pointers. */
  posted: unknown;
  /** ETag of the record, for amendments. */
  recordTag: string;
  /** ETag of the assessment, for the release. */
  assessmentTag: string;
  isReleasable: boolean;
  /** Pack that was sealed from this version of the record, if any. */
  released: Pack | undefined;
  points: Point[];
  documents: { id: string; title: string; html: string }[];
  /** All packs of the aircraft, newest first. */
  packs: Pack[];
  /** Pack that was current before this visit, and its record. */
  before: { pack: Pack; record: unknown } | undefined;
  /**
   * Open items of the aircraft with the time left by this record; undefined if the visit is released or they are not
   * known.
   */
  open: DueList | undefined;
  files: PageFiles;
}

/** Reads everything for an inspection; again if the record changed in the meantime. */
export async function readVisit(client: Slipmark, name: VisitName): Promise<ReadVisit> {
  for (;;) {
    const visit = await client.getVisit(name);
    const whole = await client.getWholeRecord(name);
    const assessment = await client.getAssessment(name);
    const drafts = await client.getDraftDocuments(name);
    const releasedAs = await packNameOf(client, name);
    const packs = await allItems(client.listAircraftPacks, { registration: name.registration });
    const released = packs.find(({ pack }) => pack === releasedAs);
    const isOneForm = assessment.etag === drafts.etag && (await client.getVisit(name)).etag === visit.etag;
    if (!isOneForm) continue;
    const record = upgrade(whole.body) as VisitRecord;
    return {
      record,
      posted: visit.body,
      recordTag: visit.etag ?? '',
      assessmentTag: assessment.etag ?? '',
      isReleasable: assessment.body.isReleasable,
      released,
      points: withoutRepeats(assessment.body.findings as unknown as Point[]),
      documents: drafts.body.items,
      packs,
      before: await packBefore(client, name, packs),
      open: released || packs.length === 0 ? undefined : await standsOpen(client, name, record),
      files: await photographs(client, record),
    };
  }
}

/** Returns the pack that the visit was released as, unless the visit was amended since. */
async function packNameOf(client: Slipmark, { registration, visit }: VisitName): Promise<string | undefined> {
  for await (const kept of everyItem(client.listVisits, { registration })) {
    if (kept.visit === visit && kept.state === 'released') return kept.pack ?? undefined;
  }
  return undefined;
}

/** Returns the pack before a visit; for a released visit, the pack before it and not a later one. */
async function packBefore(
  client: Slipmark,
  { visit }: VisitName,
  packs: readonly Pack[],
): Promise<ReadVisit['before']> {
  const own = packs.find((pack) => pack.visit === visit)?.number ?? Number.POSITIVE_INFINITY;
  const pack = packCountedFrom(packs.filter(({ number }) => number < own));
  return pack && { pack, record: await recordOfPack(client, pack.pack) };
}

async function standsOpen(
  client: Slipmark,
  { registration }: VisitName,
  record: VisitRecord,
): Promise<ReadVisit['open']> {
  const due = await ifThere(client.getDue({ registration }));
  return due && dueByRecord(due.body, record, new Date().toISOString());
}

async function photographs(client: Slipmark, { attachments = [] }: VisitRecord): Promise<PageFiles> {
  const shown = attachments.filter(({ kind }) => kind === 'photograph');
  const files = shown.map(async ({ sha256 }) => {
    const file = await ifThere(client.getAttachmentFile({ sha256 }));
    return file ? [[sha256, file.bytes] as const] : [];
  });
  return Object.fromEntries((await Promise.all(files)).flat());
}
