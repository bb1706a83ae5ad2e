// Weighing form: fields become a record, and the record becomes a report. Nothing is sent.

import { debounce } from './debounce.ts';
import { byId } from './element.ts';
import { offerUndo } from './offer-undo.ts';
import { openOutcome } from './sheet/outcome.ts';
import type { Said } from './thread/protocol.ts';
import { fieldNamed, filledIn, fillFrom, nameOf, showUnits } from './weighing/fields.ts';
import { recordOfForm } from './weighing/record-of-form.ts';

/** Session storage key of the filled-in form. */
const DRAFT = 'slipmark-weighing-form';

const outcome = openOutcome();
const form = byId('form', HTMLFormElement);
const save = byId('save-record', HTMLAnchorElement);

const work = async (): Promise<void> => {
  const filled = filledIn(form);
  sessionStorage.setItem(DRAFT, JSON.stringify(filled));
  showUnits(form, filled);
  const { record, fieldOf } = recordOfForm(filled);
  const place = ({ pointer }: Said) => {
    const field = fieldNamed(form, fieldOf(pointer));
    const show = (): void => (field ?? fieldNamed(form, '/aircraft'))?.focus();
    return { text: field ? nameOf(field) : 'the form as a whole', show };
  };
  const sheet = await outcome.work({ record, at: new Date().toISOString(), files: {} }, place);
  if (sheet) offer(record);
};

function offer(record: unknown): void {
  URL.revokeObjectURL(save.href);
  save.href = URL.createObjectURL(new Blob([JSON.stringify(record, null, 2)], { type: 'application/json' }));
  save.hidden = false;
}

/** Whether the form has content worth keeping. */
let isTyped = false;

const workWhenStill = debounce(work);
form.addEventListener('input', () => {
  isTyped = true;
  workWhenStill();
});
form.addEventListener('submit', (event) => event.preventDefault());
byId('fill-example', HTMLButtonElement).addEventListener('click', () => {
  fillExample().catch(outcome.fail);
});

async function fillExample(): Promise<void> {
  const example = (await (await fetch('/examples/weighing-only.json')).json()) as object;
  const before = filledIn(form);
  const put = (values: object): void => {
    fillFrom(form, values);
    void work();
  };
  put(example);
  if (isTyped) offerUndo(() => put(before));
  isTyped = false;
}

const draft = sessionStorage.getItem(DRAFT);
if (draft !== null) {
  fillFrom(form, JSON.parse(draft));
  isTyped = true;
  void work();
} else showUnits(form, filledIn(form));
