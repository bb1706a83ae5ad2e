import type { LinkAndItsUse, Pack, Slipmark } from '../../../worker/client/client.ts';
import { printMoment } from '../../../worker/units/calendar.ts';
import { element } from '../element.ts';
import { fetchFile } from './fetch-file.ts';
import { fetchPdf } from './fetch-pdf.ts';
import { madeLink } from './made-link.ts';
import { onClick } from './on-click.ts';
import { said } from './session.ts';
import { standingOf } from './words.ts';

/** Every pack with its files, and the links that lead to it. */
export function packRows(client: Slipmark, packs: readonly Pack[]): HTMLElement[] {
  if (packs.length === 0) return [element('p', {}, 'None.')];
  return packs.map((pack) => {
    const pdf = element('button', { type: 'button', className: 'place' }, 'PDF');
    const record = element('button', { type: 'button', className: 'place' }, 'Record');
    onClick(pdf, () => fetchPdf(client, pack.pack));
    onClick(record, async () => {
      const { bytes } = await client.getPackRecord({ pack: pack.pack });
      fetchFile(bytes, `${pack.pack}-record.json`, 'application/json');
    });
    const links = element('details', {}, element('summary', {}, 'Links'), element('div', {}));
    links.addEventListener('toggle', () => {
      if (links.open) said(showLinks(client, pack.pack, links.lastElementChild as unknown as HTMLElement));
    });
    return element('section', { className: 'pack' }, element('p', {}, standingOf(pack), ' ', pdf, record), links);
  });
}

async function showLinks(client: Slipmark, pack: string, place: HTMLElement): Promise<void> {
  const { items } = (await client.listLinks({ pack })).body;
  const make = element('button', { type: 'button' }, 'Make the owner’s link');
  onClick(make, async () => {
    const { body } = await client.makeLink({ pack, body: { audience: 'owner' } });
    await showLinks(client, pack, place);
    place.appendChild(madeLink(body.url));
  });
  const rows = items.map((link) => linkLine(client, pack, link, () => showLinks(client, pack, place)));
  place.replaceChildren(element('ul', { className: 'plain' }, ...rows), make);
}

function linkLine(client: Slipmark, pack: string, use: LinkAndItsUse, again: () => Promise<void>): HTMLElement {
  const { link, audience, expiresAt, revokedAt, timesOpened, openings } = use;
  const last = openings[0];
  const opened = last
    ? `opened ${timesOpened === 1 ? 'once' : `${timesOpened} times`}, last ${printMoment(last.at)} (${last.what})`
    : 'not opened yet';
  const state = revokedAt === null ? `until ${printMoment(expiresAt)}` : `revoked ${printMoment(revokedAt)}`;
  const line = element('li', {}, `For the ${audience}, ${state}: ${opened}. `);
  if (revokedAt !== null) return line;
  const revoke = element('button', { type: 'button', className: 'place' }, 'Revoke');
  let isMeant = false;
  // A link that is revoked by a slip cannot be given again.
  onClick(revoke, async () => {
    if (isMeant) await client.revokeLink({ pack, link }).then(again);
    isMeant = true;
    revoke.textContent = 'Revoke it for good';
  });
  line.appendChild(revoke);
  return line;
}
