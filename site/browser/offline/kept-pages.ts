// An opened page is stored under a digest of its address, so that no cache contains a token. Offline the page shows
// that it cannot know the current state of the release.

/** Name of the cache that holds the pages behind links. */
export const KEPT_PAGES = 'slipmark-pages-1';

/** What a page hands over to be kept. */
export interface KeepMessage {
  pathname: string;
  /** The page as it came, before any script changed it. */
  html: string;
  headers: Record<string, string>;
  /** Addresses of what it needs. */
  assets: string[];
}

/** The address of a page holds its token: it is kept under a digest of it. */
export async function keptUnder(pathname: string): Promise<string> {
  const bytes = new Uint8Array(await crypto.subtle.digest('SHA-256', new TextEncoder().encode(pathname)));
  return `/p/${Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('')}`;
}
