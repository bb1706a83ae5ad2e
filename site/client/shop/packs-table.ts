import type { LinkAndItsUse, Pack, Slipmark } from '../../../worker/client/client.ts';
import { element } from '../element.ts';
import { fetchFile } from './fetch-file.ts';
import { said } from './session.ts';
import { momentText, standingOf } from './words.ts';

/** Every pack with its files, and the links that lead to it. */
export function packRows(client: Slipmark, packs: readonly Pack[]): HTMLElement[] {
  if (packs.length === 0) return [element('p', {}, 'None.')];
  return packs.map((pack) => {
    const pdf = element('button', { type: 'button', className: 'place' }, 'PDF');
    const record = element('button', { type: 'button', className: 'place' }, 'Record');
    pdf.addEventListener('click', () => {
      const name = `${pack.pack}-release-pack.pdf`;
      said(client.getPackPdf({ pack: pack.pack }).then(({ bytes }) => fetchFile(bytes, name, 'application/pdf')));
    });
    record.addEventListener('click', () => {
      const name = `${pack.pack}-record.json`;
      said(client.getPackRecord({ pack: pack.pack }).then(({ bytes }) => fetchFile(bytes, name, 'application/json')));
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
  const made = element('p', { className: 'small' });
  const make = element('button', { type: 'button' }, 'Make the owner’s link');
  make.addEventListener('click', () => {
    said(
      client.makeLink({ pack, body: { audience: 'owner' } }).then(async ({ body }) => {
        await showLinks(client, pack, place);
        const shown = element('a', { href: body.url, rel: 'noreferrer' }, body.url);
        place.appendChild(element('p', { className: 'small' }, 'Shown this once: ', shown));
      }),
    );
  });
  const rows = items.map((link) => linkLine(client, pack, link, () => showLinks(client, pack, place)));
  place.replaceChildren(element('ul', { className: 'plain' }, ...rows), make, made);
}

function linkLine(client: Slipmark, pack: string, use: LinkAndItsUse, again: () => Promise<void>): HTMLElement {
  const { link, audience, expiresAt, revokedAt, timesOpened, openings } = use;
  const last = openings[0];
  const opened = last ? `opened ${timesOpened} times, last ${momentText(last.at)} (${last.what})` : 'not opened yet';
  const state = revokedAt === null ? `until ${momentText(expiresAt)}` : `revoked ${momentText(revokedAt)}`;
  const line = element('li', {}, `For the ${audience}, ${state}: ${opened}. `);
  if (revokedAt !== null) return line;
  const revoke = element('button', { type: 'button', className: 'place' }, 'Revoke');
  revoke.addEventListener('click', () => said(client.revokeLink({ pack, link }).then(again)));
  line.appendChild(revoke);
  return line;
}
