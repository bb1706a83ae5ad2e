import { printMoment } from '../../worker/units/calendar.ts';
import { browserLexicon } from '../../worker/words/browser-lexicon.ts';
import { wordsOf } from '../../worker/words/words.ts';

/** After so long, somebody who comes back to the page is told when it was read. */
const OLD_MS = 3_600_000;

/** Keeps the page for when there is no network, and says so where it is shown without one. */
export function startOffline(): void {
  if (!('serviceWorker' in navigator)) return;
  navigator.serviceWorker.register('/offline.js', { scope: '/p/' }).catch(() => undefined);
  const notice = document.querySelector<HTMLElement>('#offline');
  const lexicon = browserLexicon(document.documentElement.lang);
  const words = wordsOf(lexicon);
  const openedAt = printMoment(document.body.dataset.openedAt ?? '', lexicon.figures);
  const isOld = (): boolean => Date.now() - Date.parse(document.body.dataset.openedAt ?? '') > OLD_MS;
  const check = async (): Promise<void> => {
    const isReached = await fetch('/healthz', { cache: 'no-store' }).then(
      ({ ok }) => ok,
      () => false,
    );
    if (!notice) return;
    notice.hidden = isReached && !isOld();
    notice.textContent = isReached
      ? words`As it stood on ${openedAt}. Load the page anew to learn whether it was replaced or withdrawn since.`
      : words`Without a network: as it stood on ${openedAt}. Whether it was replaced or withdrawn since is not known.`;
  };
  void check();
  addEventListener('online', () => void check());
  // A page that was left open for days says what held then.
  document.addEventListener('visibilitychange', () => document.visibilityState === 'visible' && void check());
  addEventListener('offline', () => void check());
}
