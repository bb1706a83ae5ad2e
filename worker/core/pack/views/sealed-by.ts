import * as m from '../../text/generated/messages.ts';
import { printableLineOf } from '../../text/printable.ts';
import type { PackContext } from '../context.ts';

/**
 * Who seals the pack, as the deployment knows them: the letterhead is what the record says. A name from before names had to be printable
 * is printed as far as it can be; the identifier beside it tells whose it is.
 */
export function sealedByLine({ identity, fmt }: PackContext): string {
  const sealedBy = identity?.sealedBy;
  if (!sealedBy) return fmt.text(m.sealedBy_nobodyNoSeal);
  const name = printableLineOf(sealedBy.name) || sealedBy.id;
  return fmt.text(m.sealedBy_key, { name, sealedBy: sealedBy.id, kid: sealedBy.kid });
}
