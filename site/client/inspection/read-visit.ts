import { everyItem, ifThere, type Pack, type Slipmark, type VisitRecord } from '../../../worker/client/client.ts';
import type { PageFiles, Said } from '../core/protocol.ts';

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
  /** The newest pack of the aircraft, and the record that it was sealed from. */
  before: { pack: Pack; record: unknown } | undefined;
  files: PageFiles;
}

/** Reads everything that an inspector looks at; again where the record moved in between. */
export async function readVisit(client: Slipmark, name: VisitName): Promise<ReadVisit> {
  for (;;) {
    const visit = await client.getVisit(name);
    const assessment = await client.getAssessment(name);
    const drafts = await client.getDraftDocuments(name);
    const released = await packOf(client, name);
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
      before: await packBefore(client, name),
      files: await photographs(client, visit.body),
    };
  }
}

/** The pack that the visit was released as, unless it was amended since. */
async function packOf(client: Slipmark, { registration, visit }: VisitName): Promise<Pack | undefined> {
  for await (const kept of everyItem(client.listVisits, { registration })) {
    if (kept.visit !== visit) continue;
    return kept.state === 'released' && kept.pack !== null
      ? (await client.getPack({ pack: kept.pack })).body
      : undefined;
  }
  return undefined;
}

/** The pack that stands, unless it came of this very visit: then the one before it. */
async function packBefore(client: Slipmark, { registration, visit }: VisitName): Promise<ReadVisit['before']> {
  for await (const pack of everyItem(client.listAircraftPacks, { registration })) {
    if (pack.visit === visit) continue;
    const { bytes } = await client.getPackRecord({ pack: pack.pack });
    return { pack, record: JSON.parse(new TextDecoder().decode(bytes)) };
  }
  return undefined;
}

async function photographs(client: Slipmark, { attachments = [] }: VisitRecord): Promise<PageFiles> {
  const shown = attachments.filter(({ kind }) => kind === 'photograph');
  const files = shown.map(async ({ sha256 }) => {
    const file = await ifThere(client.getAttachmentFile({ sha256 }));
    return file ? [[sha256, file.bytes] as const] : [];
  });
  return Object.fromEntries((await Promise.all(files)).flat());
}
