import { canonicalJson } from '../../../core/pack/canonical-json.ts';
import { sha256 } from '../../../core/pack/digest.ts';

/**
 * Whether the text of a record has this digest. A record is digested as it was posted, of whatever version.
 *
 * @param text stored text, of any content
 */
export async function isDigestOfRecord(text: string, digest: string): Promise<boolean> {
  try {
    if ((await sha256(text)) === digest) return true;
    return (await sha256(canonicalJson(JSON.parse(text)))) === digest;
  } catch {
    return false;
  }
}
