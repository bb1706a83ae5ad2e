import type { LinkAndItsUse, Pack, Slipmark } from '../../../worker/client/client.ts';
import { printTimestamp } from '../../../worker/core/text/dates.ts';
import { element } from '../element.ts';
import { fetchFile } from './fetch-file.ts';
import { fetchPdf } from './fetch-pdf.ts';
import { madeLink } from './made-link.ts';
import { onClickOnce } from './on-click-once.ts';
import { type PackStanding, packStanding } from './pack-standing.ts';
import { said } from './session.ts';

/** Label of the file: the file itself does not state the status of the pack. */
const FILES: Readonly<Record<PackStanding['kind'], string>> = {
  stands: 'PDF',
  corrected: 'PDF, from old figures',
  superseded: 'PDF, superseded',
  withdrawn: 'PDF, withdrawn',
};

/**
 * Returns a row for every pack with its status, files and links.
 *
 * @param packs all packs of the aircraft, newest first
 */
export function packRows(client: Slipmark, packs: readonly Pack[]): HTMLElement[] {
  if (packs.length === 0) return [element('p', {}, 'None.')];
  return packs.map((pack) => packRow(client, pack, packStanding(pack, packs)));
}

function packRow(client: Slipmark, { pack }: Pack, { kind, words }: PackStanding): HTMLElement {
  const pdf = element('button', { type: 'button', className: 'place' }, FILES[kind]);
  const record = element('button', { type: 'button', className: 'place' }, 'Record');
  onClickOnce(pdf, () => fetchPdf(client, pack));
  onClickOnce(record, async () => {
    const { bytes } = await client.getPackRecord({ pack });
    fetchFile(bytes, `${pack}-record.json`, 'application/json');
  });
  const links = element('details', {}, element('summary', {}, 'Links'), element('div', {}));
  links.addEventListener('toggle', () => {
    if (links.open)
      said(showLinks(client, { pack, stands: kind === 'stands' }, links.lastElementChild as unknown as HTMLElement));
  });
  const name = element('strong', {}, kind === 'stands' ? `${pack} is current` : pack);
  const line = element('p', {}, name, `, ${words}`);
  return element(
    'section',
    { className: `pack ${kind}` },
    line,
    element('p', { className: 'files' }, pdf, record),
    links,
  );
}

/** Pack with its links. */
interface Linked {
  pack: string;
  stands: boolean;
}

async function showLinks(client: Slipmark, linked: Linked, place: HTMLElement): Promise<void> {
  const { pack, stands } = linked;
  const { items } = (await client.listLinks({ pack })).body;
  const make = element('button', { type: 'button' }, 'Make the owner’s link');
  onClickOnce(make, async () => {
    const { body } = await client.makeLink({ pack, body: { audience: 'owner' } });
    await showLinks(client, linked, place);
    place.appendChild(madeLink(body.url));
  });
  const rows = items.map((link) => linkLine(client, pack, link, () => showLinks(client, linked, place)));
  const none = element('p', { className: 'small' }, 'No new link is made to a pack that is not current.');
  place.replaceChildren(element('ul', { className: 'plain' }, ...rows), stands ? make : none);
}

function linkLine(client: Slipmark, pack: string, use: LinkAndItsUse, again: () => Promise<void>): HTMLElement {
  const { link, audience, expiresAt, revokedAt, timesOpened, openings } = use;
  const last = openings[0];
  const opened = last
    ? `opened ${timesOpened === 1 ? 'once' : `${timesOpened} times`}, last ${printTimestamp(last.at)} (${last.what})`
    : 'not opened yet';
  const state = revokedAt === null ? `until ${printTimestamp(expiresAt)}` : `revoked ${printTimestamp(revokedAt)}`;
  const line = element('li', {}, `For the ${audience}, ${state}: ${opened}. `);
  if (revokedAt !== null) return line;
  const revoke = element('button', { type: 'button', className: 'place' }, 'Revoke');
  let isMeant = false;
  // A link revoked by mistake cannot be restored.
  onClickOnce(revoke, async () => {
    if (isMeant) await client.revokeLink({ pack, link }).then(again);
    isMeant = true;
    revoke.textContent = 'Revoke it for good';
  });
  line.appendChild(revoke);
  return line;
}
