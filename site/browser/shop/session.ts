import { type Slipmark, SlipmarkProblem, slipmark } from '../../../worker/client/client.ts';
import { byId, element } from '../element.ts';
import { errorMessage } from '../error-message.ts';

// The key stays in `sessionStorage`: entered once per tab and gone with it. Aircraft and visit are in the query of
// the address, because static pages have no other place; a registration is not secret, and a key or token is never
// there.

/** The key is kept for the time that the tab is open, and nowhere else. */
const KEPT = 'slipmark-key';

/** What a header can carry; anything else was copied along by mistake. */
const KEY = /^[!-~]+$/;

/**
 * Has a page of a workshop work with a key: asks for one where there is none, and again where it is refused.
 *
 * @param work called with a client whenever there is a key; what it throws is said on the page
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
    // Headings without anything under them would say that there is nothing.
    page.hidden = true;
    if (form.hidden) offerAgain(() => void start(key));
  };
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    const key = field.value.trim();
    if (!KEY.test(key)) {
      sayProblem('This is no key: it has signs that no key has, such as a space');
      return;
    }
    sessionStorage.setItem(KEPT, key);
    void start(key);
  });
  // What was read with the key goes with it.
  forget.addEventListener('click', () => {
    sessionStorage.removeItem(KEPT);
    location.reload();
  });
  const kept = sessionStorage.getItem(KEPT);
  if (kept === null) show(false);
  else void start(kept);
}

/**
 * Says on the page what went wrong; a key that is not valid is forgotten.
 *
 * @returns whether all went well
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

/** What went wrong, as a person at the page is told. */
export function wordsOf(error: unknown): string {
  if (!(error instanceof SlipmarkProblem)) return errorMessage(error);
  if (error.status === 0) return 'The service cannot be reached. What was typed stays here: try again in a moment';
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

const sayWait = (seconds: number): void => sayBusy(`The service asks to wait: it is asked again in ${seconds} s.`);

function sayBusy(words: string): void {
  const place = byId('busy', HTMLElement);
  place.textContent = words;
  place.hidden = false;
}
