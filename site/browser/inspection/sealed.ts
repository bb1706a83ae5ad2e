import type { Pack, Slipmark } from '../../../worker/client/client.ts';
import { sentence } from '../../../worker/core/text/sentence.ts';
import { byId, element } from '../element.ts';
import { fetchPdf } from '../shop/fetch-pdf.ts';
import { madeLink } from '../shop/made-link.ts';
import { onClickOnce } from '../shop/on-click-once.ts';
import { packStanding } from '../shop/pack-standing.ts';
import { aircraftAddress } from '../shop/words.ts';

/**
 * Shows the result of a release: the pack, and the link for the owner.
 *
 * @param packs all packs of the aircraft, newest first
 */
export function showSealed(client: Slipmark, pack: Pack, packs: readonly Pack[]): void {
  const file = element('button', { type: 'button' }, 'Fetch the PDF');
  const link = element('button', { type: 'button' }, 'Make the owner’s link');
  const made = element('div', { role: 'status' });
  onClickOnce(file, () => fetchPdf(client, pack.pack));
  onClickOnce(link, async () => {
    const { body } = await client.makeLink({ pack: pack.pack, body: { audience: 'owner' } });
    made.replaceChildren(madeLink(body.url));
  });
  const { kind, words } = packStanding(pack, packs);
  const isStanding = kind === 'stands';
  const standing = isStanding ? `It was ${words}.` : sentence(`It is not current: ${words}`);
  byId('release', HTMLElement).replaceChildren(
    element('p', { className: `verdict ${isStanding ? 'good' : 'bad'}` }, `Sealed as ${pack.pack}`),
    element('p', {}, `${standing} An amended record is released again, as the next issue of this pack.`),
    element('p', { className: 'tools' }, file, ...(isStanding ? [link] : [])),
    made,
    element('p', {}, element('a', { href: aircraftAddress(pack.registration) }, `All of ${pack.registration}`)),
  );
}
