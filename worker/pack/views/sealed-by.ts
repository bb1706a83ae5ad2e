import type { PackContext } from '../context.ts';

/** Who seals the pack, as the deployment knows them: the letterhead is what the record says. */
export function sealedByLine({ identity, say }: PackContext): string {
  const { sealedBy } = identity;
  if (!sealedBy) return say.words`nobody: it has no seal`;
  return say.words`${sealedBy.name} (${sealedBy.id}), with the key ${sealedBy.kid}`;
}
