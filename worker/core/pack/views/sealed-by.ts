import * as m from '../../text/generated/messages.ts';
import { printableLineOf } from '../../text/printable.ts';
import type { PackContext } from '../context.ts';

/**
 * Returns the sealing workshop as known to the deployment: the letterhead comes from the record. A name older than the
 * check for printable names is printed as far as possible; the identifier next to it is unambiguous.
 */
export function sealedByLine({ identity, fmt }: PackContext): string {
  const sealedBy = identity?.sealedBy;
  if (!sealedBy) return fmt.text(m.sealedBy_nobodyNoSeal);
  const name = printableLineOf(sealedBy.name) || sealedBy.id;
  return fmt.text(m.sealedBy_key, { name, sealedBy: sealedBy.id, kid: sealedBy.kid });
}
