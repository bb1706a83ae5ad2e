import { type Pack, type Slipmark, SlipmarkProblem } from '../../../worker/client/client.ts';
import { element, there } from '../element.ts';
import { fetchFile } from '../shop/fetch-file.ts';
import { said } from '../shop/session.ts';
import { sayMoved } from './moved.ts';
import type { ReadVisit, VisitName } from './read-visit.ts';
import type { Ticks } from './ticks.ts';

/** A visit as it is being read. */
interface Reading {
  name: VisitName;
  read: ReadVisit;
  ticks: Ticks;
  show(document: string): void;
}

/**
 * The release: open once nothing stands against it, every document is ticked and the statement on hazards is made. It names
 * the digest that was read, so that nothing else can be released by it.
 *
 * @returns to be called when a tick changes
 */
export function startRelease(client: Slipmark, { name, read, ticks, show }: Reading): () => void {
  const place = there('release', HTMLElement);
  const { record } = read;
  const person = record.people.find(({ id }) => id === record.release?.by);
  const hazard = element('input', { type: 'checkbox', id: 'hazard' });
  const button = element('button', { type: 'button' }, 'Release and seal');
  const open = element('p', { className: 'small' });
  const words = person
    ? `${person.name}, ${person.capacity}, ${person.authorisation ?? 'no authorisation stated'}`
    : 'nobody: the record names no releasing person';
  const statement = element('button', { type: 'button', className: 'place' }, 'Release statement');
  statement.addEventListener('click', () => show('release-statement'));
  place.replaceChildren(
    element('p', {}, 'The statement, its scope and limitations are those of the document ', statement, '.'),
    element('p', {}, 'Released by ', element('strong', {}, words)),
    element(
      'p',
      {},
      element(
        'label',
        { className: 'tick' },
        hazard,
        ' That person knows of no condition of the aircraft that endangers flight.',
      ),
    ),
    element('p', { className: 'digest' }, `Read: assessment ${read.assessmentTag.replaceAll('"', '')}`),
    element('p', {}, button),
    open,
  );
  const update = (): void => {
    const missing = ticks.missing().length;
    const obstacles = [
      read.isReleasable ? '' : 'Open points stand against it.',
      missing === 0 ? '' : `${missing} ${missing === 1 ? 'document is' : 'documents are'} not ticked as read.`,
      hazard.checked ? '' : 'The statement on hazards is not made.',
    ].filter(Boolean);
    open.textContent = obstacles.join(' ');
    button.disabled = obstacles.length > 0;
  };
  hazard.addEventListener('change', update);
  button.addEventListener('click', () => {
    button.disabled = true;
    said(release(client, name, read, place).finally(update));
  });
  update();
  return update;
}

async function release(client: Slipmark, name: VisitName, read: ReadVisit, place: HTMLElement): Promise<void> {
  try {
    const body = { by: read.record.release?.by ?? '', knowsOfNoHazard: true };
    const { body: pack } = await client.releaseVisit({ ...name, ifMatch: read.assessmentTag, body });
    showSealed(client, pack, place);
  } catch (error) {
    const hasMoved = error instanceof SlipmarkProblem && error.status === 412;
    if (!hasMoved) throw error;
    sayMoved(() => location.reload());
    there('moved', HTMLElement).scrollIntoView({ block: 'center' });
  }
}

/** What comes of it: the pack, and the link that the owner opens. */
function showSealed(client: Slipmark, { pack, registration }: Pack, place: HTMLElement): void {
  const file = element('button', { type: 'button' }, 'Fetch the PDF');
  const link = element('button', { type: 'button' }, 'Make the owner’s link');
  const made = element('p', { className: 'small' });
  file.addEventListener('click', () => said(fetchPdf(client, pack)));
  link.addEventListener('click', () => {
    said(
      client.makeLink({ pack, body: { audience: 'owner' } }).then(({ body }) => {
        made.replaceChildren('Shown this once: ', element('a', { href: body.url, rel: 'noreferrer' }, body.url));
      }),
    );
  });
  place.replaceChildren(
    element('p', { className: 'verdict good' }, `Sealed as ${pack}`),
    element('p', { className: 'tools' }, file, link),
    made,
    element('p', {}, element('a', { href: `/aircraft?registration=${registration}` }, `All of ${registration}`)),
  );
  place.scrollIntoView({ block: 'center' });
}

async function fetchPdf(client: Slipmark, pack: string): Promise<void> {
  const { bytes } = await client.getPackPdf({ pack });
  fetchFile(bytes, `${pack}-release-pack.pdf`, 'application/pdf');
}
