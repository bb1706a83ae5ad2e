import type { Slipmark } from '../../../worker/client/client.ts';
import { element, there } from '../element.ts';
import { findingItems } from '../sheet/findings-list.ts';
import type { Preview } from '../sheet/preview.ts';
import { said } from '../shop/session.ts';
import { dropDraft } from './answer-drafts.ts';
import { answerForm } from './answer-form.ts';
import { overWhatWasRead } from './moved.ts';
import { placeOf } from './place.ts';
import type { Point, ReadVisit, VisitName } from './read-visit.ts';

/** A visit whose points are shown. */
interface Shown {
  name: VisitName;
  read: ReadVisit;
  preview: Preview;
  /** Reads the visit anew, and says what goes wrong. */
  again(): void;
  /** Reads the visit anew. */
  reread(): Promise<void>;
}

/** What stands against the release, each point with its place, and a caution with who answers for it. */
export function showPoints(client: Slipmark, shown: Shown): void {
  const { read, preview } = shown;
  const ids = read.documents.map(({ id }) => id);
  const items = findingItems(read.points, ({ pointer }) => {
    const { document, words } = placeOf(pointer, read.record, ids);
    const title = read.documents.find(({ id }) => id === document)?.title ?? document;
    return { text: title, show: () => preview.show(document, words) };
  });
  items.forEach((item, index) => {
    const point = read.points[index];
    if (point?.severity !== 'caution') return;
    // An answer is for a code: it stands with the first, and says for how many.
    const alike = read.points.filter(({ code }) => code === point.code);
    if (alike[0] !== point) return;
    const isOpen = point.acknowledgedBy === undefined;
    item.appendChild(isOpen ? openCaution(client, shown, point, alike.length) : answered(point, read));
  });
  there('points', HTMLElement).replaceChildren(...items);
  there('no-points', HTMLElement).hidden = items.length > 0;
}

function answered({ code, acknowledgedBy }: Point, { record }: ReadVisit): HTMLElement {
  const person = record.people.find(({ id }) => id === acknowledgedBy)?.name ?? acknowledgedBy;
  const reason = record.release?.acknowledgements?.find((one) => one.code === code)?.reason ?? '';
  return element('p', { className: 'small' }, `${person} answers for it: ${reason}`);
}

function openCaution(client: Slipmark, shown: Shown, point: Point, alike: number): HTMLElement {
  const { name, again, reread } = shown;
  const { record, recordTag } = shown.read;
  return answerForm(point, alike, record, (acceptance) => {
    const acknowledgements = [...(record.release?.acknowledgements ?? []), acceptance];
    const amend = client.patchVisit({ ...name, ifMatch: recordTag, body: { release: { acknowledgements } } });
    const amended = amend.then(() => {
      dropDraft(point.code);
      return reread();
    });
    return said(overWhatWasRead(amended, again));
  });
}
