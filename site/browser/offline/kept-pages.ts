import { sha256 } from '../../../worker/core/pack/digest.ts';

// An opened page is stored under a digest of its address, so that no cache contains a token. Offline the page shows
// that it cannot know the current state of the release.

/** Name of the cache of the pages behind links. */
export const KEPT_PAGES = 'slipmark-pages-1';

/** Message of a page to the service worker: content to keep. */
export interface KeepMessage {
  pathname: string;
  /** HTML as received, before any script changed it. */
  html: string;
  headers: Record<string, string>;
  /** Addresses of the assets of the page. */
  assets: string[];
}

/** Returns the cache key of a page: a digest, because its address contains the token. */
export async function keptUnder(pathname: string): Promise<string> {
  return `/p/${await sha256(pathname)}`;
}
