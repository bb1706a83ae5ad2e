import { type Slipmark, SlipmarkProblem } from '../../../worker/client/client.ts';
import { byId, element } from '../element.ts';
import type { ReadVisit, VisitName } from './read-visit.ts';

const EVERY_MS = 15_000;

let timer: ReturnType<typeof setInterval> | undefined;

/** Checks from time to time whether the record changed since it was read, and reports the first change. */
export function watch(client: Slipmark, name: VisitName, { assessmentTag }: ReadVisit, readAgain: () => void): void {
  unwatch();
  timer = setInterval(() => {
    if (document.visibilityState === 'hidden') return;
    client
      .getAssessment(name)
      .then(({ etag }) => etag !== assessmentTag && sayMoved(readAgain))
      // If the service cannot be reached, nothing is known about the record.
      .catch(() => undefined);
  }, EVERY_MS);
}

export function unwatch(): void {
  clearInterval(timer);
  byId('moved', HTMLElement).hidden = true;
}

/** Makes a change based on what was read. If the record has changed since, this is reported and nothing is changed. */
export async function overWhatWasRead(change: Promise<void>, readAgain: () => void): Promise<void> {
  try {
    await change;
  } catch (error) {
    if (!(error instanceof SlipmarkProblem && error.status === 412)) throw error;
    sayMoved(readAgain);
    byId('moved', HTMLElement).scrollIntoView({ block: 'center' });
  }
}

/** Reports that the page no longer shows the current record, and offers to read it again. */
function sayMoved(readAgain: () => void): void {
  const place = byId('moved', HTMLElement);
  const again = element('button', { type: 'button' }, 'Read it as it is now');
  again.addEventListener('click', readAgain);
  const words = 'The record was changed since you read it. Documents that the change touches lose their tick. ';
  place.replaceChildren(words, again);
  place.hidden = false;
}
