// Service worker of the pages behind links: an opened page opens again without a network. With a network it changes
// nothing.
import { KEPT_PAGES, type KeepMessage, keptUnder } from './offline/kept-pages.ts';

interface Waiting {
  waitUntil(work: Promise<unknown>): void;
}

interface Fetching {
  request: Request;
  respondWith(response: Promise<Response>): void;
}

interface Told extends Waiting {
  data: KeepMessage;
  source: { postMessage(message: 'kept'): void } | null;
}

/** Used part of the scope of a service worker. */
interface WorkerScope {
  addEventListener(type: 'fetch', listener: (event: Fetching) => void): void;
  addEventListener(type: 'install' | 'activate', listener: (event: Waiting) => void): void;
  addEventListener(type: 'message', listener: (event: Told) => void): void;
  skipWaiting(): Promise<void>;
  clients: { claim(): Promise<void> };
}

/** Time after which a kept page is shown if the network hangs. */
const PATIENCE_MS = 3_000;

/**
 * After a page was served from the cache, its assets are served from it for this time: each would wait as long again.
 */
const HANGS_FOR_MS = 30_000;
let hungAt = Number.NEGATIVE_INFINITY;

const surroundings = globalThis as unknown as WorkerScope;

surroundings.addEventListener('install', (event) => event.waitUntil(surroundings.skipWaiting()));

// The page that installed this worker is its first: it is controlled from now on.
surroundings.addEventListener('activate', (event) => event.waitUntil(surroundings.clients.claim()));

// A page opened before the worker was installed sends its HTML.
surroundings.addEventListener('message', (event) => {
  const { data, source } = event;
  event.waitUntil(keep(data).then(() => source?.postMessage('kept')));
});

surroundings.addEventListener('fetch', (event) => {
  const { request } = event;
  const { pathname, origin } = new URL(request.url);
  const isPage = /^\/p\/[^/]+$/.test(pathname);
  const isAsset = pathname.startsWith('/assets/');
  if (request.method !== 'GET' || origin !== location.origin || !(isPage || isAsset)) return;
  event.respondWith(freshOrKept(request, pathname, isPage));
});

async function keep({ pathname, html, headers, assets }: KeepMessage): Promise<void> {
  const cache = await caches.open(KEPT_PAGES);
  await cache.put(await keptUnder(pathname), new Response(html, { headers }));
  await Promise.all(assets.map((asset) => cache.add(asset)));
}

/** Returns the response of the network; if it does not respond in time, the kept response. */
async function freshOrKept(request: Request, pathname: string, isPage: boolean): Promise<Response> {
  const cache = await caches.open(KEPT_PAGES);
  const key = isPage ? await keptUnder(pathname) : pathname;
  const isHanging = !isPage && Date.now() - hungAt < HANGS_FOR_MS;
  const asset = isHanging ? await cache.match(key) : undefined;
  if (asset) return asset;
  const fresh = fetch(request).then(async (response) => {
    if (response.ok) await cache.put(key, response.clone());
    // A service that fails for now removes nothing; an invalid link removes its page.
    else if (isPage && response.status === 404) await cache.delete(key);
    return response;
  });
  const first = await Promise.race([fresh.catch(() => undefined), afterPatience()]);
  const kept = first ? undefined : await cache.match(key);
  if (!kept) return first ?? fresh;
  fresh.catch(() => undefined);
  if (!isPage) return kept;
  hungAt = Date.now();
  return markedAsKept(kept);
}

/** Returns a kept page with a mark in its first line: statements about today are hidden before any request is made. */
async function markedAsKept(kept: Response): Promise<Response> {
  const html = await kept.text();
  const headers = new Headers(kept.headers);
  // They describe the body as transferred.
  for (const name of ['Content-Encoding', 'Content-Length']) headers.delete(name);
  return new Response(html.replace(/<body\b/, '<body data-as-read="offline"'), { headers });
}

const afterPatience = (): Promise<undefined> =>
  new Promise((resolve) => {
    setTimeout(() => resolve(undefined), PATIENCE_MS);
  });
