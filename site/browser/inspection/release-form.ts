import type { Pack, Slipmark } from '../../../worker/client/client.ts';
import { byId, element } from '../element.ts';
import { said } from '../shop/session.ts';
import { overWhatWasRead } from './moved.ts';
import type { ReadVisit, VisitName } from './read-visit.ts';
import type { Ticks } from './ticks.ts';

/** Visit that is being read by the inspector. */
interface Reading {
  name: VisitName;
  read: ReadVisit;
  ticks: Ticks;
  show(document: string): void;
  /** Reads the visit again. */
  again(): void;
  sealed(pack: Pack): void;
}

/**
 * Starts the release form. The button is enabled once nothing blocks the release, every document is ticked and the
 * statement on hazards is made. The release names the digest that was read, so that nothing else can be released.
 *
 * @returns function to call when a tick changes
 */
export function startRelease(client: Slipmark, reading: Reading): () => void {
  const { read, ticks, show, again } = reading;
  const hazard = element('input', { type: 'checkbox', id: 'hazard' });
  const button = element('button', { type: 'button' }, 'Release and seal');
  const open = element('p', { className: 'small', id: 'obstacles' });
  button.setAttribute('aria-describedby', open.id);
  const statement = element('button', { type: 'button', className: 'place' }, 'Release statement');
  statement.addEventListener('click', () => show('release-statement'));
  const knowsOfNone = ' That person knows of no condition of the aircraft that endangers flight.';
  byId('release', HTMLElement).replaceChildren(
    element('p', {}, 'Statement, scope and limitations: ', statement),
    element('p', {}, 'Released by ', element('strong', {}, personOf(read))),
    element('p', {}, element('label', { className: 'tick' }, hazard, knowsOfNone)),
    element('p', { className: 'digest' }, `Read: assessment ${read.assessmentTag.replaceAll('"', '')}`),
    element('p', {}, button),
    open,
  );
  let isUnderWay = false;
  const update = (): void => {
    const obstacles = obstaclesTo(read, ticks, hazard.checked);
    open.textContent = isUnderWay ? 'Being sealed.' : obstacles.join(' ');
    button.disabled = isUnderWay || obstacles.length > 0;
  };
  hazard.addEventListener('change', update);
  button.addEventListener('click', async () => {
    isUnderWay = true;
    update();
    await said(overWhatWasRead(release(client, reading), again));
    isUnderWay = false;
    update();
  });
  update();
  return update;
}

function personOf({ record }: ReadVisit): string {
  const person = record.people.find(({ id }) => id === record.release?.by);
  return person
    ? `${person.name}, ${person.capacity}, ${person.authorisation ?? 'no authorisation stated'}`
    : 'nobody: the record names no releasing person';
}

function obstaclesTo({ isReleasable }: ReadVisit, ticks: Ticks, knowsOfNone: boolean): string[] {
  const missing = ticks.missing().length;
  return [
    isReleasable ? '' : 'Open points block the release.',
    missing === 0 ? '' : `${missing} ${missing === 1 ? 'document is' : 'documents are'} not ticked as read.`,
    knowsOfNone ? '' : 'The statement on hazards is not made.',
  ].filter(Boolean);
}

async function release(client: Slipmark, { name, read, sealed }: Reading): Promise<void> {
  const body = { by: read.record.release?.by ?? '', knowsOfNoHazard: true };
  sealed((await client.releaseVisit({ ...name, ifMatch: read.assessmentTag, body })).body);
}
