import { byId, element } from '../element.ts';
import type { Preview } from '../sheet/preview.ts';
import type { ReadVisit } from './read-visit.ts';
import type { Ticks } from './ticks.ts';

/** Lists every document with a tick for *read*, and a button that ticks the current document and opens the next. */
export function showDocuments({ documents }: ReadVisit, ticks: Ticks, preview: Preview, onTick: () => void): void {
  const boxes = new Map<string, HTMLInputElement>();
  const tick = (id: string, isRead: boolean): void => {
    ticks.set(id, isRead);
    onTick();
  };
  const items = documents.map(({ id, title }) => {
    const box = element('input', { type: 'checkbox', checked: ticks.has(id), ariaLabel: `Read: ${title}` });
    boxes.set(id, box);
    box.addEventListener('change', () => tick(id, box.checked));
    const leads = element('button', { type: 'button', className: 'place' }, title);
    leads.addEventListener('click', () => preview.show(id));
    return element('li', {}, element('label', { className: 'tick', title: `Read: ${title}` }, box), leads);
  });
  byId('ticks', HTMLElement).replaceChildren(...items);
  const readNext = byId('read-next', HTMLButtonElement);
  readNext.disabled = false;
  readNext.onclick = () => {
    const shown = preview.shown();
    const box = boxes.get(shown);
    if (box) box.checked = true;
    tick(shown, true);
    const missing = ticks.missing();
    const ids = documents.map(({ id }) => id);
    const next = missing.find((id) => ids.indexOf(id) > ids.indexOf(shown)) ?? missing[0];
    if (next !== undefined) preview.show(next);
    else byId('the-release', HTMLElement).scrollIntoView();
  };
}
