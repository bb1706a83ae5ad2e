import * as m from '../text/generated/messages.ts';

/** Where an issued pack stands in the archive, and when it was issued. A draft has none. */
export interface PackIdentity {
  /** Pack number, `Q-SLM-P3-1`. */
  pack: string;
  issue: string;
  issuedAt: string;
  visit: string;
  previous: { pack: string; manifestSha256: string } | undefined;
  supersedes: string | undefined;
  /** The workshop that seals the pack, as the deployment knows it, and the thumbprint of its key; undefined where nobody does. */
  sealedBy: { id: string; name: string; kid: string } | undefined;
}

/** What stands on every page of a pack that no one has released. */
export const NOT_RELEASED = m.identity_notReleased;
