// Service worker of the pages behind links: what was opened opens again without a network. With one it stands aside.
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

/** As much of a service worker's surroundings as is used here. */
interface WorkerScope {
  addEventListener(type: 'fetch', listener: (event: Fetching) => void): void;
  addEventListener(type: 'install' | 'activate', listener: (event: Waiting) => void): void;
  addEventListener(type: 'message', listener: (event: Told) => void): void;
  skipWaiting(): Promise<void>;
  clients: { claim(): Promise<void> };
}

/** So long a network may hang before what was kept is shown. */
const PATIENCE_MS = 3_000;

/** So long after a page came from what was kept, what it is made from does too: it would be waited for as long again. */
const HANGS_FOR_MS = 30_000;
let hungAt = Number.NEGATIVE_INFINITY;

const surroundings = globalThis as unknown as WorkerScope;

surroundings.addEventListener('install', (event) => event.waitUntil(surroundings.skipWaiting()));

// The page that brought this worker is its first: it is kept from then on, too.
surroundings.addEventListener('activate', (event) => event.waitUntil(surroundings.clients.claim()));

// A page that was there before the worker hands over what it was made from.
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

/** What the network gives; where it gives nothing, or nothing in time, what was kept. */
async function freshOrKept(request: Request, pathname: string, isPage: boolean): Promise<Response> {
  const cache = await caches.open(KEPT_PAGES);
  const key = isPage ? await keptUnder(pathname) : pathname;
  const isHanging = !isPage && Date.now() - hungAt < HANGS_FOR_MS;
  const asset = isHanging ? await cache.match(key) : undefined;
  if (asset) return asset;
  const fresh = fetch(request).then(async (response) => {
    if (response.ok) await cache.put(key, response.clone());
    // A service that fails just now takes nothing away; a link that opens nothing any more does.
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

/** A kept page says from its first line on that it is one: what it claims of today is hidden before anything is asked. */
async function markedAsKept(kept: Response): Promise<Response> {
  const html = await kept.text();
  const headers = new Headers(kept.headers);
  // They are of the body as it came over the wire.
  for (const name of ['Content-Encoding', 'Content-Length']) headers.delete(name);
  return new Response(html.replace(/<body\b/, '<body data-as-read="offline"'), { headers });
}

const afterPatience = (): Promise<undefined> =>
  new Promise((resolve) => {
    setTimeout(() => resolve(undefined), PATIENCE_MS);
  });
