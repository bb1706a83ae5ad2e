/** A way to make the document of the bench. Loading its module loads the library. */
export interface Maker {
  /** Makes a document of so many pages. */
  make: (pages: number) => Promise<Uint8Array>;
  /** Lets go of what outlasts a document. */
  close?: () => Promise<void>;
}
