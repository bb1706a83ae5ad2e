import type { Slipmark } from '../../../worker/client/client.ts';
import { SCHEMA_VERSION } from '../../../worker/core/record/upgrades.ts';
import { byId, element } from '../element.ts';
import { findingItems } from '../sheet/findings-list.ts';
import type { Preview } from '../sheet/preview.ts';
import { said } from '../shop/session.ts';
import { dropDraft } from './answer-drafts.ts';
import { answerForm } from './answer-form.ts';
import { carriedIndexOf, carriedWith, openItemOf, typedAnswer } from './carried-answer.ts';
import { carriedForm } from './carried-form.ts';
import { overWhatWasRead } from './moved.ts';
import { openItemLine, printedOpen } from './open-item-point.ts';
import { placeOf } from './place.ts';
import type { Point, ReadVisit, VisitName } from './read-visit.ts';
import { takeOverForm } from './take-over-form.ts';

type Amendment = Parameters<Slipmark['patchVisit']>[0]['body'];

/** Visit of which the findings are shown. */
interface Shown {
  name: VisitName;
  read: ReadVisit;
  preview: Preview;
  /** Reads the visit again and reports errors. */
  again(): void;
  /** Reads the visit again. */
  reread(): Promise<void>;
}

/** Shows the open findings, each with its place; a caution with the form to accept it. */
export function showPoints(client: Slipmark, shown: Shown): void {
  const { read, preview } = shown;
  const ids = read.documents.map(({ id }) => id);
  const forms = openItemForms(client, shown);
  const items = findingItems(read.points, (point) => {
    const { document, words } = placeOf(point.pointer, read.posted, ids);
    // What is said of an open item stands beside its name for the life of the aircraft.
    const sought = point.pointer.startsWith('/carried') ? openItemOf(point) : words;
    const title = read.documents.find(({ id }) => id === document)?.title ?? document;
    return { text: title, show: () => preview.show(document, sought) };
  });
  const open = printedOpen(read);
  items.forEach((item, index) => {
    const point = read.points[index];
    const openItem = point && openItemOf(point);
    if (openItem !== undefined) item.appendChild(openItemLine(open, openItem, shown.name.registration));
    const form = point && forms.get(point);
    // Findings about one answer share a form, which is shown with the first of them.
    if (form?.parentElement === null) item.appendChild(form);
    if (point?.code === 'STANDING_FILE_MOVED') item.appendChild(takeOver(client, shown));
    if (point?.severity !== 'caution') return;
    // An acceptance is for a code: it is shown with the first finding and states the number of findings.
    const alike = read.points.filter(({ code }) => code === point.code);
    if (alike[0] !== point) return;
    const isOpen = point.acknowledgedBy === undefined;
    item.appendChild(isOpen ? openCaution(client, shown, point, alike) : answered(point, read));
  });
  byId('points', HTMLElement).replaceChildren(...items);
  byId('no-points', HTMLElement).hidden = items.length > 0;
}

/** Returns the forms that answer findings about open items, by finding. */
function openItemForms(client: Slipmark, shown: Shown): Map<Point, HTMLDetailsElement> {
  const forms = new Map<Point, HTMLDetailsElement>();
  const made = new Map<string, HTMLDetailsElement>();
  for (const point of shown.read.points) {
    const item = openItemOf(point);
    if (item === undefined) continue;
    const index = carriedIndexOf(point);
    const draft = `${index ?? 'new'} ${item}`;
    const form = made.get(draft) ?? openItemForm(client, shown, { item, index, draft });
    made.set(draft, form);
    forms.set(point, form);
  }
  return forms;
}

function openItemForm(
  client: Slipmark,
  shown: Shown,
  { item, index, draft }: { item: string; index: number | undefined; draft: string },
): HTMLDetailsElement {
  const { record } = shown.read;
  return carriedForm({
    draft,
    record,
    given: typedAnswer(record, item, index),
    isOnRecord: index !== undefined,
    put: (answer) => amended(client, shown, { carried: carriedWith(record, answer, index) }, draft),
  });
}

/** Amends the record that was read, drops the draft, and reads the visit again. */
function amended(client: Slipmark, shown: Shown, body: Amendment, draft: string): Promise<unknown> {
  const { name, read, again, reread } = shown;
  const amend = client
    .patchVisit({ ...name, ifMatch: read.recordTag, body: { schemaVersion: SCHEMA_VERSION, ...body } })
    .then(() => {
      dropDraft(draft);
      return reread();
    });
  return said(overWhatWasRead(amend, again));
}

/** Returns the form that builds the visit on a newer standing file. */
function takeOver(client: Slipmark, { name, read, again, reread }: Shown): HTMLElement {
  return takeOverForm(client, name, (body) => {
    const taken = client.takeOverStanding({ ...name, ifMatch: read.recordTag, body }).then(reread);
    return said(overWhatWasRead(taken, again));
  });
}

function answered({ code, acknowledgedBy }: Point, { record }: ReadVisit): HTMLElement {
  const person = record.people.find(({ id }) => id === acknowledgedBy)?.name ?? acknowledgedBy;
  const reason = record.release?.acknowledgements?.find((one) => one.code === code)?.reason ?? '';
  return element('p', { className: 'small' }, `Accepted by ${person}: ${reason}`);
}

function openCaution(client: Slipmark, shown: Shown, point: Point, alike: readonly Point[]): HTMLElement {
  const { record } = shown.read;
  return answerForm(point, alike, record, (acceptance) => {
    const others = (record.release?.acknowledgements ?? []).filter(({ code }) => code !== acceptance.code);
    const acknowledgements = [...others, acceptance];
    return amended(client, shown, { release: { acknowledgements } }, point.code);
  });
}
