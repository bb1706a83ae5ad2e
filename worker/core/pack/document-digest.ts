/** A document of a pack, as its manifest and its issue record name it. */
export interface DocumentDigest {
  id: string;
  title: string;
  sha256: string;
}
