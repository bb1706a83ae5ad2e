import { ifThere, type KeptVisit, refusalOf, type Slipmark, type VisitRecord } from '../../client/client.ts';
import { canonicalJson } from '../../core/pack/canonical-json.ts';
import { filesByDigest } from './digest-files.ts';
import type { Output } from './output.ts';

/** Visit by its address. */
export interface VisitName {
  registration: string;
  visit: string;
}

/** Another record is stored, and the caller did not name it for replacement. */
export interface StandsThere {
  kind: 'stands-there';
  digest: string;
}

export type Posted = { kind: 'kept'; kept: KeptVisit } | StandsThere;

/** Value of `--replace` that replaces any record. */
export const ANY_RECORD = 'kept';

/**
 * Stores a record. Another record is replaced only if the caller names its digest. The ETag alone would not do: a `PUT` under an
 * ETag that was read a second ago passes every check, and somebody else’s amendment is lost.
 *
 * @param replace digest of the record that may be replaced, or `ANY_RECORD`
 */
export async function postRecord(
  client: Slipmark,
  name: VisitName,
  body: VisitRecord,
  replace: string | undefined,
): Promise<Posted> {
  const before = await ifThere(client.getVisit(name));
  if (!before) {
    const { body: kept } = await client.putVisit({ ...name, body, ifNoneMatch: '*' });
    return { kind: 'kept', kept };
  }
  const digest = before.etag?.replaceAll('"', '') ?? '';
  const isSame = canonicalJson(before.body) === canonicalJson(body);
  if (!isSame && replace !== ANY_RECORD && replace !== digest) return { kind: 'stands-there', digest };
  const { body: kept } = await client.putVisit({ ...name, body, ifMatch: before.etag });
  return { kind: 'kept', kept };
}

/** A file that the record names and the service does not have. */
export interface Lacking {
  sha256: string;
  title: string;
  why: string;
}

/** Uploads the files that a record names and the service does not have yet. */
export async function uploadFiles(
  client: Slipmark,
  { attachments }: { attachments: readonly { sha256: string; title: string }[] },
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
      lacking.push({ sha256, title, why: folder === undefined ? 'not uploaded' : `not in ${folder}` });
      continue;
    }
    output.progress(`Uploading ${file.name}, ${index + 1} of ${attachments.length}`);
    const refusal = await refusalOf(client.putAttachment({ sha256, body: file.bytes }), 422);
    if (refusal) lacking.push({ sha256, title, why: refusal.detail });
  }
  return lacking;
}
