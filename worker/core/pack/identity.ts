import * as m from '../text/generated/messages.ts';

/** Position of an issued pack in the archive, and its time of issue. A draft has none. */
export interface PackIdentity {
  /** Pack number, `Q-SLM-P3-1`. */
  pack: string;
  issue: string;
  issuedAt: string;
  visit: string;
  previous: { pack: string; manifestSha256: string } | undefined;
  supersedes: string | undefined;
  /** The workshop that seals the pack, as known to the deployment, and the thumbprint of its key; undefined without a seal. */
  sealedBy: { id: string; name: string; kid: string } | undefined;
}

/** Mark on every page of a pack that is not released. */
export const NOT_RELEASED = m.identity_notReleased;
