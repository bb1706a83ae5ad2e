import type { Slipmark } from '../../../worker/client/client.ts';
import { element, there } from '../element.ts';
import type { ReadVisit, VisitName } from './read-visit.ts';

const EVERY_MS = 15_000;

let timer: ReturnType<typeof setInterval> | undefined;

/** Looks now and then whether the record moved since it was read, and says so as soon as it did. */
export function watch(client: Slipmark, name: VisitName, { assessmentTag }: ReadVisit, readAgain: () => void): void {
  clearInterval(timer);
  there('moved', HTMLElement).hidden = true;
  timer = setInterval(() => {
    if (document.visibilityState === 'hidden') return;
    client
      .getAssessment(name)
      .then(({ etag }) => etag !== assessmentTag && sayMoved(readAgain))
      // A service that cannot be reached just now says nothing about the record.
      .catch(() => undefined);
  }, EVERY_MS);
}

/** Says that what stands on the page is not what stands in the record, and leads to reading it anew. */
export function sayMoved(readAgain: () => void): void {
  const place = there('moved', HTMLElement);
  const again = element('button', { type: 'button' }, 'Read it as it is now');
  again.addEventListener('click', readAgain);
  const words = 'The record was changed since you read it. Documents that the change touches lose their tick. ';
  place.replaceChildren(words, again);
  place.hidden = false;
}
