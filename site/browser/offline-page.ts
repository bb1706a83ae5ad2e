import { printTimestamp } from '../../worker/core/text/dates.ts';
import { sayIn } from '../../worker/core/text/formatter.ts';
import * as m from '../../worker/core/text/generated/messages.ts';
import { languageOf } from '../../worker/core/text/languages.ts';
import { localeOf } from '../../worker/core/text/locale.ts';
import { pagePolicy } from '../../worker/edge/http/page-policy.ts';
import type { KeepMessage } from './offline/kept-pages.ts';

/** After so long, somebody who comes back to the page is told when it was read. */
const OLD_MS = 3_600_000;
/** A network that hangs for so long is as good as none. */
const PATIENCE_MS = 3_000;

/** The page as it came: taken before anything changes it. */
export const pageAsItCame = (): string => `<!doctype html>\n${document.documentElement.outerHTML}`;

/** Keeps the page for when there is no network, and says so where it is shown without one. */
export function startOffline(html: string): void {
  if (!('serviceWorker' in navigator)) return;
  const locale = localeOf(languageOf(document.documentElement.lang));
  const say = sayIn(locale);
  const isCopy = document.body.dataset.asRead !== undefined;
  // A copy is kept already, and not to be kept as it is marked.
  void (isCopy ? Promise.resolve(true) : keepThisPage(html)).then((isKept) => {
    const note = document.querySelector<HTMLElement>('#kept');
    if (note && isKept) note.textContent = say(m.offlinePage_keptDeviceOpensWithout);
  });
  const notice = document.querySelector<HTMLElement>('#offline');
  const openedAt = printTimestamp(document.body.dataset.openedAt ?? '', locale.format);
  const isOld = (): boolean => Date.now() - Date.parse(document.body.dataset.openedAt ?? '') > OLD_MS;
  const show = (isReached: boolean): void => {
    const isDoubtful = !isReached || isCopy || isOld();
    if (isDoubtful) document.body.dataset.asRead = isReached ? 'old' : 'offline';
    else delete document.body.dataset.asRead;
    // The PDF is not kept: what cannot be had is not offered.
    for (const link of document.querySelectorAll<HTMLElement>('[data-needs-network]')) link.hidden = !isReached;
    if (!notice) return;
    notice.hidden = !isDoubtful;
    notice.textContent = isReached
      ? say(m.offlinePage_stoodLoadPageAnew, { openedAt })
      : say(m.withoutNetworkStoodWhether, { openedAt });
  };
  const check = async (): Promise<void> => {
    const isReached = await fetch('/healthz', { cache: 'no-store', signal: AbortSignal.timeout(PATIENCE_MS) }).then(
      async (response) => (await response.text()) !== '' && response.ok,
      () => false,
    );
    show(isReached);
  };
  // Nothing is claimed of today while the network is still waited for.
  if (isCopy) show(false);
  void check();
  addEventListener('online', () => void check());
  // A page that was left open for days says what held then.
  document.addEventListener('visibilitychange', () => document.visibilityState === 'visible' && void check());
  addEventListener('offline', () => void check());
}

/**
 * Hands the page to the service worker. It cannot see the first opening by itself, because that is what brings it.
 *
 * @returns whether it is kept
 */
async function keepThisPage(html: string): Promise<boolean> {
  try {
    await navigator.serviceWorker.register('/offline.js', { scope: '/p/' });
    const { active } = await navigator.serviceWorker.ready;
    const isKept = new Promise<boolean>((resolve) => {
      navigator.serviceWorker.addEventListener('message', ({ data }) => resolve(data === 'kept'), { once: true });
    });
    const loaded = performance.getEntriesByType('resource').map(({ name }) => new URL(name));
    const own = loaded.filter(({ origin, pathname }) => origin === location.origin && pathname.startsWith('/assets/'));
    const headers = { 'Content-Type': 'text/html; charset=utf-8', 'Content-Security-Policy': pagePolicy(true) };
    const assets = [...new Set(own.map(({ pathname }) => pathname))];
    active?.postMessage({ pathname: location.pathname, html, headers, assets } satisfies KeepMessage);
    return await isKept;
  } catch {
    return false;
  }
}
