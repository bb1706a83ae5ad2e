import type { Pack, Slipmark } from '../../../worker/client/client.ts';
import { element, there } from '../element.ts';
import { fetchPdf } from '../shop/fetch-pdf.ts';
import { madeLink } from '../shop/made-link.ts';
import { onClick } from '../shop/on-click.ts';
import { aircraftAddress, standingOf, stands } from '../shop/words.ts';

/** What came of the release: the pack, and the link that the owner opens. */
export function showSealed(client: Slipmark, pack: Pack): void {
  const file = element('button', { type: 'button' }, 'Fetch the PDF');
  const link = element('button', { type: 'button' }, 'Make the owner’s link');
  const made = element('div', { role: 'status' });
  onClick(file, () => fetchPdf(client, pack.pack));
  onClick(link, async () => {
    const { body } = await client.makeLink({ pack: pack.pack, body: { audience: 'owner' } });
    made.replaceChildren(madeLink(body.url));
  });
  const standing = stands(pack)
    ? `It was ${standingOf(pack).replace(`${pack.pack}, `, '')}.`
    : `It no longer holds: ${standingOf(pack)}.`;
  there('release', HTMLElement).replaceChildren(
    element('p', { className: `verdict ${stands(pack) ? 'good' : 'bad'}` }, `Sealed as ${pack.pack}`),
    element('p', {}, `${standing} An amended record is released anew, as the next issue of this pack.`),
    element('p', { className: 'tools' }, file, ...(stands(pack) ? [link] : [])),
    made,
    element('p', {}, element('a', { href: aircraftAddress(pack.registration) }, `All of ${pack.registration}`)),
  );
}
