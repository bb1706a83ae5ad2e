import { localZone } from '../../../worker/core/record/local-zone.ts';
import { formatterFor } from '../../../worker/core/text/formatter.ts';
import { ENGLISH } from '../../../worker/core/text/locale.ts';
import { sentence } from '../../../worker/core/text/sentence.ts';
import { element } from '../element.ts';
import { type OpenList, openEntry, openLists } from '../shop/open-lists.ts';
import { aircraftAddress } from '../shop/words.ts';
import type { ReadVisit } from './read-visit.ts';

/** Returns the open items of the aircraft as they are printed; an empty list if they are not known. */
export function printedOpen({ open, record }: ReadVisit): OpenList[] {
  if (!open) return [];
  return openLists(open, { record, fmt: formatterFor(record.units, ENGLISH, localZone(record)) });
}

/** Returns the due-list line of an open item; if the list lacks it, a link to the due list. */
export function openItemLine(lists: readonly OpenList[], item: string, registration: string): HTMLElement {
  const found = openEntry(lists, item);
  if (!found) {
    const link = element('a', { href: `${aircraftAddress(registration)}#what-is-due` }, 'Open items of the aircraft');
    return element('p', { className: 'small' }, link);
  }
  const { what, kind, due } = found.entry;
  const clock = due ? [`Limit: ${due.limit}`, `Left by this record: ${due.left}`, stateSentence(due.state)] : [];
  return element(
    'p',
    { className: 'small' },
    [`${kind === '' ? found.title : capital(kind)}: ${what}`, ...clock].map(sentence).join(' '),
  );
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const stateSentence = (state: string): string =>
  state === 'not known' ? 'Whether it is due is not known' : `State: ${state}`;
