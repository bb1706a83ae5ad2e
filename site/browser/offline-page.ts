import { printTimestamp } from '../../worker/core/text/dates.ts';
import { sayIn } from '../../worker/core/text/formatter.ts';
import * as m from '../../worker/core/text/generated/messages.ts';
import { languageOf } from '../../worker/core/text/languages.ts';
import { localeOf } from '../../worker/core/text/locale.ts';
import { pagePolicy } from '../../worker/edge/http/page-policy.ts';
import type { KeepMessage } from './offline/kept-pages.ts';

/** Age from which the page shows when it was read. */
const OLD_MS = 3_600_000;
/** Time after which a slow network counts as unreachable. */
const PATIENCE_MS = 3_000;

/** Returns the page as received; call it before anything changes the page. */
export const pageAsItCame = (): string => `<!doctype html>\n${document.documentElement.outerHTML}`;

/** Keeps the page for use without a network, and marks a page that is shown without one. */
export function startOffline(html: string): void {
  if (!('serviceWorker' in navigator)) return;
  const locale = localeOf(languageOf(document.documentElement.lang));
  const say = sayIn(locale);
  const isCopy = document.body.dataset.asRead !== undefined;
  // A copy is already kept, and must not be kept again with its marks.
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
    // The PDF is not kept, so no link to it is shown.
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
  // Nothing is stated about today until the network has answered.
  if (isCopy) show(false);
  void check();
  addEventListener('online', () => void check());
  // A page left open for days shows the state of that day.
  document.addEventListener('visibilitychange', () => document.visibilityState === 'visible' && void check());
  addEventListener('offline', () => void check());
}

/**
 * Sends the page to the service worker, which cannot see the first visit because that visit installs it.
 *
 * @returns whether the page is kept
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
