import { ifThere, type KeptVisit, refusalOf, type Slipmark, type VisitRecord } from '../../client/client.ts';
import { canonicalJson } from '../../core/pack/canonical-json.ts';
import { filesByDigest } from './digest-files.ts';
import type { Output } from './output.ts';

/** A visit as its address names it. */
export interface VisitName {
  registration: string;
  visit: string;
}

/** Somebody else's record, or an earlier one, that nobody said may be replaced. */
export interface StandsThere {
  kind: 'stands-there';
  digest: string;
}

export type Posted = { kind: 'kept'; kept: KeptVisit } | StandsThere;

/** `kept` for whatever is there. */
export const WHATEVER_IS_KEPT = 'kept';

/**
 * Keeps a record. What is there already is replaced only where it is the same, or where the caller names it: an amendment of
 * somebody else is never lost by a command that did not know of it.
 *
 * @param over digest of the record that may be replaced, or `WHATEVER_IS_KEPT`
 */
export async function postRecord(
  client: Slipmark,
  name: VisitName,
  body: VisitRecord,
  over: string | undefined,
): Promise<Posted> {
  const before = await ifThere(client.getVisit(name));
  if (!before) {
    const { body: kept } = await client.putVisit({ ...name, body, ifNoneMatch: '*' });
    return { kind: 'kept', kept };
  }
  const digest = before.etag?.replaceAll('"', '') ?? '';
  const isSame = canonicalJson(before.body) === canonicalJson(body);
  if (!isSame && over !== WHATEVER_IS_KEPT && over !== digest) return { kind: 'stands-there', digest };
  const { body: kept } = await client.putVisit({ ...name, body, ifMatch: before.etag });
  return { kind: 'kept', kept };
}

/** A file that a record names and that did not come to be there. */
export interface Lacking {
  sha256: string;
  title: string;
  why: string;
}

/** Hands in what a record names and the service does not have yet. */
export async function uploadFiles(
  client: Slipmark,
  { attachments = [] }: Pick<VisitRecord, 'attachments'>,
  folder: string | undefined,
  output: Output,
): Promise<Lacking[]> {
  const files = folder === undefined ? new Map<string, never>() : filesByDigest(folder);
  const lacking: Lacking[] = [];
  for (const [index, { sha256, title }] of attachments.entries()) {
    const known = await ifThere(client.getAttachment({ sha256 }));
    if (known?.body.ok) continue;
    const file = files.get(sha256);
    if (!file) {
      lacking.push({ sha256, title, why: folder === undefined ? 'it was not handed in' : `it is not in ${folder}` });
      continue;
    }
    output.progress(`Handing in ${file.name}, ${index + 1} of ${attachments.length}`);
    const refusal = await refusalOf(client.putAttachment({ sha256, body: file.bytes }), 422);
    if (refusal) lacking.push({ sha256, title, why: refusal.detail });
  }
  return lacking;
}
