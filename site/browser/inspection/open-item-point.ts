import { localZone } from '../../../worker/core/record/local-zone.ts';
import { formatterFor } from '../../../worker/core/text/formatter.ts';
import { ENGLISH } from '../../../worker/core/text/locale.ts';
import { sentence } from '../../../worker/core/text/sentence.ts';
import { element } from '../element.ts';
import { type OpenList, openEntry, openLists } from '../shop/open-lists.ts';
import { aircraftAddress } from '../shop/words.ts';
import type { ReadVisit } from './read-visit.ts';

/** What stands open on the aircraft, as it is printed; nothing where that is not known. */
export function printedOpen({ open, record }: ReadVisit): OpenList[] {
  if (!open) return [];
  return openLists(open, { record, fmt: formatterFor(record.units, ENGLISH, localZone(record)) });
}

/** An open item as the due list of the aircraft has it; where it is not there, the way to what is. */
export function openItemLine(lists: readonly OpenList[], item: string, registration: string): HTMLElement {
  const found = openEntry(lists, item);
  if (!found) {
    const link = element(
      'a',
      { href: `${aircraftAddress(registration)}#what-is-due` },
      'What stands open on the aircraft',
    );
    return element('p', { className: 'small' }, link);
  }
  const { what, due } = found.entry;
  const clock = due ? [`Limit: ${due.limit}`, `Left by this record: ${due.left}`, stateSentence(due.state)] : [];
  return element('p', { className: 'small' }, [`${found.title}: ${what}`, ...clock].map(sentence).join(' '));
}

const stateSentence = (state: string): string =>
  state === 'not known' ? 'Whether it is due is not known' : `State: ${state}`;
