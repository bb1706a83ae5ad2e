/** A document of a pack, as its manifest and its record of issue name it. */
export interface DocumentDigest {
  id: string;
  title: string;
  sha256: string;
}
