import { type Slipmark, SlipmarkProblem, slipmark } from '../../../worker/client/client.ts';
import { there } from '../element.ts';

/** The key is kept for the time that the tab is open, and nowhere else. */
const KEPT = 'slipmark-key';

/**
 * Has a page of a workshop work with a key: asks for one where there is none, and again where it is refused.
 *
 * @param work called with a client whenever there is a key; what it throws is said on the page
 */
export function withKey(work: (client: Slipmark) => Promise<void>): void {
  const form = there('key-form', HTMLFormElement);
  const field = there('key', HTMLInputElement);
  const page = there('work', HTMLElement);
  const forget = there('forget-key', HTMLButtonElement);
  const show = (hasKey: boolean): void => {
    form.hidden = hasKey;
    page.hidden = !hasKey;
    forget.hidden = !hasKey;
  };
  const drop = (): void => {
    sessionStorage.removeItem(KEPT);
    field.value = '';
    show(false);
  };
  const start = (key: string): void => {
    show(true);
    said(work(slipmark({ key })), drop);
  };
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    sessionStorage.setItem(KEPT, field.value.trim());
    start(field.value.trim());
  });
  forget.addEventListener('click', drop);
  const kept = sessionStorage.getItem(KEPT);
  if (kept === null) show(false);
  else start(kept);
}

/** Says on the page what went wrong; a key that is not valid is forgotten. */
export function said(doing: Promise<void>, drop: () => void = () => undefined): void {
  const place = there('problem', HTMLElement);
  place.hidden = true;
  doing.catch((error: unknown) => {
    const isRefused = error instanceof SlipmarkProblem && error.status === 401;
    if (isRefused) drop();
    place.textContent = isRefused ? 'The key is not valid: give another' : wordsOf(error);
    place.hidden = false;
    place.scrollIntoView({ block: 'nearest' });
  });
}

function wordsOf(error: unknown): string {
  if (!(error instanceof SlipmarkProblem)) return error instanceof Error ? error.message : String(error);
  const sentences = error.findings.map(({ sentence }) => sentence);
  return [error.title, error.detail, ...sentences].filter(Boolean).join('. ');
}
