import type { DueList } from '../../../worker/client/client.ts';
import { tighterText } from '../../../worker/core/pack/tighter-text.ts';
import type { VisitRecord } from '../../../worker/core/record/record.ts';
import type { Formatter } from '../../../worker/core/text/formatter.ts';
import { element } from '../element.ts';
import { type OpenEntry, type OpenList, openLists } from './open-lists.ts';
import { table } from './table.ts';

/** Returns open items counted from today over all packs, with a note about the newest pack before them. */
export function dueTable(due: DueList, record: Pick<VisitRecord, 'meters'>, fmt: Formatter): HTMLElement[] {
  const lists = openLists(due, { record, fmt });
  const since = 'Hours and landings are counted from the last reading in a pack, without flights since then.';
  const answer = 'The next record answers each open item under carried, by its name.';
  return [
    ...withdrawnLine(due),
    ...tighterLines(due, record, fmt),
    ...overdueLine(lists),
    ...lists.flatMap(({ title, entries }) => [element('h3', {}, title), listTable(entries)]),
    lists.length === 0
      ? element('p', {}, 'No pack leaves anything open.')
      : element('p', { className: 'small' }, `${since} ${answer}`),
  ];
}

function withdrawnLine({ pack, withdrawn }: DueList): HTMLElement[] {
  if (withdrawn === null) return [];
  const from = withdrawn === pack ? ' What follows is as it found the aircraft.' : '';
  const words = `${withdrawn} was withdrawn, so what it closed is open.${from}`;
  return [warning(element('p', {}, strong('No current release: '), words))];
}

function tighterLines({ pack, tighter }: DueList, record: Pick<VisitRecord, 'meters'>, fmt: Formatter): HTMLElement[] {
  if (tighter.length === 0) return [];
  const lines = tighter.map((limit) => element('li', {}, tighterText(limit, record, fmt)));
  const head = strong(`By the rules of today ${pack} allows less than the pack says:`);
  const advice = element('p', {}, 'The lower limits apply. Release the aircraft again.');
  return [warning(element('p', {}, head), element('ul', {}, ...lines), advice)];
}

/** Returns the number of overdue items, as the first line. */
function overdueLine(lists: readonly OpenList[]): HTMLElement[] {
  const states = lists.flatMap(({ entries }) => entries.map(({ due }) => due?.state ?? ''));
  const late = states.filter((state) => state.startsWith('overdue'));
  const tolerated = late.filter((state) => state !== 'overdue').length;
  if (late.length === 0) return [];
  return [
    warning(
      element(
        'p',
        {},
        strong(`${late.length} overdue`),
        tolerated > 0 ? `, ${tolerated} of them within tolerance` : '',
      ),
    ),
  ];
}

function listTable(entries: readonly OpenEntry[]): HTMLElement {
  if (entries.every(({ due }) => due === undefined))
    return table(
      ['What', 'Open item'],
      entries.map(({ what, item }) => [what, itemName(item)]),
    );
  const rows = entries.map(({ what, kind, item, due }) => [
    what,
    kind,
    due?.limit ?? '',
    due?.left ?? '',
    stateCell(due?.state ?? ''),
    itemName(item),
  ]);
  return table(['What', 'Kind', 'Limit', 'Left', 'State', 'Open item'], rows);
}

const stateCell = (state: string): HTMLElement | string => (state.startsWith('overdue') ? strong(state) : state);

/** Returns the name of an item, selected whole by one click. */
export const itemName = (item: string): HTMLElement => element('code', { className: 'open-item' }, item);

const strong = (words: string): HTMLElement => element('strong', {}, words);

const warning = (...children: HTMLElement[]): HTMLElement => element('aside', { className: 'caution' }, ...children);
