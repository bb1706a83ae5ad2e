import { canonicalJson } from '../../../core/pack/canonical-json.ts';
import { sha256 } from '../../../core/pack/digest.ts';
import { upgrade } from '../../../core/record/upgrades.ts';

/**
 * Whether the text of a record has this digest. A record of an older form is digested as upgraded, or as posted if that
 * was before there was a newer form.
 *
 * @param text stored text, of any content
 */
export async function isDigestOfRecord(text: string, digest: string): Promise<boolean> {
  try {
    if ((await sha256(text)) === digest) return true;
    const record: unknown = JSON.parse(text);
    for (const form of [record, upgrade(record)]) if ((await sha256(canonicalJson(form))) === digest) return true;
    return false;
  } catch {
    return false;
  }
}
