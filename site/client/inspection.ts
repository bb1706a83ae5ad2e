// The inspector's page: open points first, the pack as it would be, what changed, and the release over what was read.
import type { Slipmark } from '../../worker/client/client.ts';
import { startCore } from './core/ask.ts';
import { element, there } from './element.ts';
import { answerForm } from './inspection/answer-form.ts';
import { comparisonTables } from './inspection/comparison-table.ts';
import { watch } from './inspection/moved.ts';
import { placeOf } from './inspection/place.ts';
import { type Point, type ReadVisit, readVisit, type VisitName } from './inspection/read-visit.ts';
import { startRelease } from './inspection/release-form.ts';
import { type Ticks, ticksOf } from './inspection/ticks.ts';
import { findingItems, verdictOf } from './sheet/findings-list.ts';
import { openPreview } from './sheet/preview.ts';
import { said, withKey } from './shop/session.ts';

const core = startCore();
const preview = openPreview();
const asked = new URLSearchParams(location.search);
const name: VisitName = { registration: asked.get('aircraft') ?? '', visit: asked.get('visit') ?? '' };

withKey(async (client) => {
  if (name.visit === '') throw new Error('The address must name a visit, as /inspection?aircraft=Q-SLM&visit=2026-11');
  await show(client);
});

async function show(client: Slipmark): Promise<void> {
  const read = await readVisit(client, name);
  const ticks = await ticksOf(name, read.documents);
  there('which', HTMLElement).textContent = `${name.registration}, visit ${name.visit}`;
  const verdict = there('verdict', HTMLElement);
  verdict.textContent = verdictOf(read.points, true);
  verdict.className = read.isReleasable ? 'verdict good' : 'verdict bad';
  preview.update(read.documents, read.files);
  showPoints(client, read);
  showDocuments(read, ticks, startRelease(client, { name, read, ticks, show: preview.show }));
  watch(client, name, read, () => said(show(client)));
  await showComparison(read);
}

function showPoints(client: Slipmark, read: ReadVisit): void {
  const ids = read.documents.map(({ id }) => id);
  const items = findingItems(read.points, ({ pointer }) => {
    const { document, words } = placeOf(pointer, read.record, ids);
    const title = read.documents.find(({ id }) => id === document)?.title ?? document;
    return { text: title, show: () => preview.show(document, words) };
  });
  items.forEach((item, index) => {
    const point = read.points[index];
    if (point?.severity !== 'caution') return;
    item.appendChild(point.acknowledgedBy === undefined ? openCaution(client, read, point) : answered(point));
  });
  there('points', HTMLElement).replaceChildren(...items);
}

const answered = ({ acknowledgedBy = '' }: Point): HTMLElement =>
  element('p', { className: 'small' }, `${acknowledgedBy} answers for it.`);

function openCaution(client: Slipmark, { record, recordTag }: ReadVisit, point: Point): HTMLElement {
  return answerForm(point, record, (acceptance) => {
    const acknowledgements = [...(record.release?.acknowledgements ?? []), acceptance];
    const amend = client.patchVisit({ ...name, ifMatch: recordTag, body: { release: { acknowledgements } } });
    said(amend.then(() => show(client)));
  });
}

/** Every document with a tick for having been read. */
function showDocuments({ documents }: ReadVisit, ticks: Ticks, onTick: () => void): void {
  const items = documents.map(({ id, title }) => {
    const box = element('input', { type: 'checkbox', checked: ticks.has(id) });
    box.addEventListener('change', () => {
      ticks.set(id, box.checked);
      onTick();
    });
    const leads = element('button', { type: 'button', className: 'place' }, title);
    leads.addEventListener('click', () => preview.show(id));
    const label = element('label', { className: 'tick', title: `Read: ${title}` }, box);
    box.setAttribute('aria-label', `Read: ${title}`);
    return element('li', {}, label, leads);
  });
  there('ticks', HTMLElement).replaceChildren(...items);
}

async function showComparison({ before, record }: ReadVisit): Promise<void> {
  const place = there('comparison', HTMLElement);
  if (!before) {
    place.replaceChildren(element('p', {}, 'There is no earlier pack of this aircraft to compare with.'));
    return;
  }
  const { pack, issuedAt } = before.pack;
  const now = { record, at: new Date().toISOString() };
  const groups = await core.comparison({ record: before.record, at: issuedAt }, now);
  place.replaceChildren(...comparisonTables(groups, pack));
}
