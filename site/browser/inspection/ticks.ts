import { sha256 } from '../../../worker/core/pack/digest.ts';
import type { ReadVisit, VisitName } from './read-visit.ts';

// Ticks are stored by the digest of the text: a point whose words change is open again. They live in the tab and are
// not a signature; the release is over the ETag that the page read.

/** Ticks of documents, each for the version that was read. */
export interface Ticks {
  has(document: string): boolean;
  set(document: string, isRead: boolean): void;
  /** Returns the documents whose current version has not been read. */
  missing(): string[];
}

/** Timestamp mark in every document; a change of it is not a reason to read the document again. */
const TIMESTAMP_MARK = /<aside class="mark">.*?<\/aside>/gs;

/**
 * Keeps ticks for the session, by the text that was read: after a change of the record, the changed documents lose
 * their ticks and the others keep them.
 */
export async function ticksOf({ registration, visit }: VisitName, documents: ReadVisit['documents']): Promise<Ticks> {
  const place = `slipmark-read ${registration}/${visit}`;
  const read = new Set<string>(JSON.parse(sessionStorage.getItem(place) ?? '[]'));
  const digests = new Map<string, string>();
  for (const { id, html } of documents) digests.set(id, await sha256(`${id} ${html.replaceAll(TIMESTAMP_MARK, '')}`));
  const has = (document: string): boolean => read.has(digests.get(document) ?? '');
  return {
    has,
    set(document, isRead) {
      const digest = digests.get(document) ?? '';
      if (isRead) read.add(digest);
      else read.delete(digest);
      sessionStorage.setItem(place, JSON.stringify([...read]));
    },
    missing: () => documents.map(({ id }) => id).filter((id) => !has(id)),
  };
}
