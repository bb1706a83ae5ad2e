import { type Slipmark, SlipmarkProblem } from '../../../worker/client/client.ts';
import { byId, element } from '../element.ts';
import type { ReadVisit, VisitName } from './read-visit.ts';

const EVERY_MS = 15_000;

let timer: ReturnType<typeof setInterval> | undefined;

/** Looks now and then whether the record moved since it was read, and says so as soon as it did. */
export function watch(client: Slipmark, name: VisitName, { assessmentTag }: ReadVisit, readAgain: () => void): void {
  unwatch();
  timer = setInterval(() => {
    if (document.visibilityState === 'hidden') return;
    client
      .getAssessment(name)
      .then(({ etag }) => etag !== assessmentTag && sayMoved(readAgain))
      // A service that cannot be reached just now says nothing about the record.
      .catch(() => undefined);
  }, EVERY_MS);
}

export function unwatch(): void {
  clearInterval(timer);
  byId('moved', HTMLElement).hidden = true;
}

/** A change made over what was read: where the record moved meanwhile, that is said, and nothing was changed. */
export async function overWhatWasRead(change: Promise<void>, readAgain: () => void): Promise<void> {
  try {
    await change;
  } catch (error) {
    if (!(error instanceof SlipmarkProblem && error.status === 412)) throw error;
    sayMoved(readAgain);
    byId('moved', HTMLElement).scrollIntoView({ block: 'center' });
  }
}

/** Says that what stands on the page is not what stands in the record, and leads to reading it anew. */
function sayMoved(readAgain: () => void): void {
  const place = byId('moved', HTMLElement);
  const again = element('button', { type: 'button' }, 'Read it as it is now');
  again.addEventListener('click', readAgain);
  const words = 'The record was changed since you read it. Documents that the change touches lose their tick. ';
  place.replaceChildren(words, again);
  place.hidden = false;
}
