import { printMoment } from '../../worker/units/calendar.ts';
import { browserLexicon } from '../../worker/words/browser-lexicon.ts';
import { wordsOf } from '../../worker/words/words.ts';

/** Keeps the page for when there is no network, and says so where it is shown without one. */
export function startOffline(): void {
  if (!('serviceWorker' in navigator)) return;
  navigator.serviceWorker.register('/offline.js', { scope: '/p/' }).catch(() => undefined);
  const notice = document.querySelector<HTMLElement>('#offline');
  const lexicon = browserLexicon(document.documentElement.lang);
  const words = wordsOf(lexicon);
  const openedAt = printMoment(document.body.dataset.openedAt ?? '', lexicon.figures);
  const check = async (): Promise<void> => {
    const isReached = await fetch('/healthz', { cache: 'no-store' }).then(
      ({ ok }) => ok,
      () => false,
    );
    if (!notice) return;
    notice.hidden = isReached;
    notice.textContent = words`Without a network: as it stood on ${openedAt}. Whether it was replaced or withdrawn since is not known.`;
  };
  void check();
  addEventListener('online', () => void check());
  addEventListener('offline', () => void check());
}
