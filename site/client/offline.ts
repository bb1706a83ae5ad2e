// Service worker of the pages behind links: what was opened opens again without a network. With one it stands aside.

interface Fetching {
  request: Request;
  respondWith(response: Promise<Response>): void;
}

/** As much of a service worker's surroundings as is used here. */
interface Surroundings {
  addEventListener(type: 'fetch', listener: (event: Fetching) => void): void;
  addEventListener(type: 'install', listener: () => void): void;
  skipWaiting(): void;
}

const CACHE = 'slipmark-pages-1';
const surroundings = globalThis as unknown as Surroundings;

surroundings.addEventListener('install', () => surroundings.skipWaiting());

surroundings.addEventListener('fetch', (event) => {
  const { request } = event;
  const { pathname, origin } = new URL(request.url);
  const isPage = /^\/p\/[^/]+$/.test(pathname);
  const isAsset = pathname.startsWith('/assets/');
  if (request.method !== 'GET' || origin !== location.origin || !(isPage || isAsset)) return;
  event.respondWith(freshOrKept(request, pathname, isPage));
});

async function freshOrKept(request: Request, pathname: string, isPage: boolean): Promise<Response> {
  const cache = await caches.open(CACHE);
  // The address of a page holds its token: it is kept under a digest of it.
  const key = isPage ? `/p/${await digest(pathname)}` : pathname;
  try {
    const response = await fetch(request);
    if (response.ok) await cache.put(key, response.clone());
    // A service that fails just now takes nothing away; a link that opens nothing any more does.
    else if (isPage && response.status === 404) await cache.delete(key);
    return response;
  } catch (error) {
    const kept = await cache.match(key);
    if (kept) return kept;
    throw error;
  }
}

async function digest(text: string): Promise<string> {
  const bytes = new Uint8Array(await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text)));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}
