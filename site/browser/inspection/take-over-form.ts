import type { Slipmark } from '../../../worker/client/client.ts';
import { element } from '../element.ts';
import { table } from '../shop/table.ts';
import type { VisitName } from './read-visit.ts';

type State = Awaited<ReturnType<Slipmark['getVisitStanding']>>['body'];
type TakeOver = Parameters<Slipmark['takeOverStanding']>[0]['body'];

/**
 * Returns the form that shows what a newer release changed in the standing file of a visit, and takes the newer file
 * over.
 *
 * @param takeOver settles once the record builds on the newer file, or is known not to
 */
export function takeOverForm(
  client: Slipmark,
  name: VisitName,
  takeOver: (request: TakeOver) => Promise<unknown>,
): HTMLElement {
  const place = element('div', {}, element('p', {}, 'Reading …'));
  const details = element('details', {}, element('summary', {}, 'Show what changed, and take it over'), place);
  details.addEventListener('toggle', () => {
    if (!details.open) return;
    client.getVisitStanding(name).then(
      ({ body }) => place.replaceChildren(...changesOf(body, takeOver)),
      (error: Error) => place.replaceChildren(element('p', {}, `Not read: ${error.message}`)),
    );
  });
  return details;
}

function changesOf({ newest, changes, open }: State, takeOver: (request: TakeOver) => Promise<unknown>): HTMLElement[] {
  if (!newest) return [element('p', {}, 'The aircraft has no other release.')];
  const { pack, sha256 } = newest;
  const ticks = new Map<string, HTMLInputElement>();
  const rows = [...changes, ...open.map((change) => ({ ...change, isStated: false }))].map((change) => {
    const tick = element('input', { type: 'checkbox' });
    const choice = element('label', { className: 'tick' }, tick, ' take it');
    if (change.isStated) ticks.set(change.part, tick);
    return [change.part, shown(change.before), shown(change.now), change.isStated ? choice : 'taken over'];
  });
  const button = element('button', { type: 'button' }, `Build this visit on ${pack}`);
  button.addEventListener('click', () => {
    button.disabled = true;
    const take = [...ticks].filter(([, { checked }]) => checked).map(([part]) => part);
    void takeOver({ pack, sha256, take }).finally(() => {
      button.disabled = false;
    });
  });
  return [
    element('p', {}, 'Where this visit states a value itself, it keeps that value unless you tick the new one.'),
    table(['Part', 'Before', `After ${pack}`, 'New value'], rows),
    element('p', {}, button),
  ];
}

const LONGEST = 80;

function shown(value: unknown): string {
  const text = value === undefined ? '–' : JSON.stringify(value);
  return text.length > LONGEST ? `${text.slice(0, LONGEST - 1)}…` : text;
}
