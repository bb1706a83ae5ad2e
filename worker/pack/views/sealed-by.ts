import { printableLineOf } from '../../text/printable.ts';
import type { PackContext } from '../context.ts';

/**
 * Who seals the pack, as the deployment knows them: the letterhead is what the record says. A name from before names had to be printable
 * is printed as far as it can be; the identifier beside it tells whose it is.
 */
export function sealedByLine({ identity, say }: PackContext): string {
  const sealedBy = identity?.sealedBy;
  if (!sealedBy) return say.words`nobody: it has no seal`;
  const name = printableLineOf(sealedBy.name) || sealedBy.id;
  return say.words`${name} (${sealedBy.id}), with the key ${sealedBy.kid}`;
}
