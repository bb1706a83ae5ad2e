import { type Slipmark, SlipmarkProblem, slipmark } from '../../../worker/client/client.ts';
import { byId, element } from '../element.ts';
import { errorMessage } from '../error-message.ts';

// The key stays in `sessionStorage`: entered once per tab and gone with it. Aircraft and visit are in the query of
// the address, because static pages have no other place; a registration is not secret, and a key or token is never
// there.

/** Session storage key of the API key: it is kept until the tab closes, and nowhere else. */
const KEPT = 'slipmark-key';

/** Characters allowed in a header; anything else was copied by mistake. */
const KEY = /^[!-~]+$/;

/**
 * Runs a page of a workshop with a key: requires one if none is stored, and again if it is refused.
 *
 * @param work called with a client whenever there is a key; errors that it throws are shown on the page
 */
export function withKey(work: (client: Slipmark) => Promise<void>): void {
  const form = byId('key-form', HTMLFormElement);
  const field = byId('key', HTMLInputElement);
  const page = byId('work', HTMLElement);
  const forget = byId('forget-key', HTMLButtonElement);
  const show = (hasKey: boolean): void => {
    form.hidden = hasKey;
    page.hidden = !hasKey;
    forget.hidden = !hasKey;
  };
  const drop = (): void => {
    sessionStorage.removeItem(KEPT);
    field.value = '';
    show(false);
    field.focus();
  };
  const start = async (key: string): Promise<void> => {
    show(true);
    sayBusy('Being read from the service.');
    if (await said(work(slipmark({ key, onWait: sayWait })), drop)) return;
    // Headings without content would state that there is nothing.
    page.hidden = true;
    if (form.hidden) offerAgain(() => void start(key));
  };
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    const key = field.value.trim();
    if (!KEY.test(key)) {
      sayProblem('Not a key: it has characters that no key has, such as a space');
      return;
    }
    sessionStorage.setItem(KEPT, key);
    void start(key);
  });
  // What was read with the key is removed with it.
  forget.addEventListener('click', () => {
    sessionStorage.removeItem(KEPT);
    location.reload();
  });
  const kept = sessionStorage.getItem(KEPT);
  if (kept === null) show(false);
  else void start(kept);
}

/**
 * Shows errors on the page; an invalid key is forgotten.
 *
 * @returns whether there was no error
 */
export async function said(doing: Promise<void>, drop: () => void = () => undefined): Promise<boolean> {
  byId('problem', HTMLElement).hidden = true;
  try {
    await doing;
    return true;
  } catch (error) {
    const isRefused = error instanceof SlipmarkProblem && error.status === 401;
    if (isRefused) drop();
    sayProblem(isRefused ? 'The key is not valid: give another' : wordsOf(error));
    return false;
  } finally {
    byId('busy', HTMLElement).hidden = true;
  }
}

/** Returns the message of an error, for the user of the page. */
export function wordsOf(error: unknown): string {
  if (!(error instanceof SlipmarkProblem)) return errorMessage(error);
  if (error.status === 0) return 'The service cannot be reached. What was typed stays here: try again shortly';
  const sentences = error.findings.map(({ sentence }) => sentence);
  return [error.title, error.detail, ...sentences].filter(Boolean).join('. ');
}

function sayProblem(words: string): void {
  const place = byId('problem', HTMLElement);
  place.textContent = words;
  place.hidden = false;
  place.scrollIntoView({ block: 'nearest' });
}

function offerAgain(again: () => void): void {
  const button = element('button', { type: 'button' }, 'Try again');
  button.addEventListener('click', again);
  byId('problem', HTMLElement).appendChild(element('p', {}, button));
}

const sayWait = (seconds: number): void => sayBusy(`The service is busy: next request in ${seconds} s.`);

function sayBusy(words: string): void {
  const place = byId('busy', HTMLElement);
  place.textContent = words;
  place.hidden = false;
}
