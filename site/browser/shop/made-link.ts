import { element } from '../element.ts';

/** Returns a link that is shown only once. It opens in a new tab: this page would not show it again. */
export function madeLink(url: string): HTMLElement {
  const link = element('a', { href: url, target: '_blank', rel: 'noreferrer' }, url);
  const line = element('p', { className: 'small' }, 'Shown this once, so keep it or send it now: ', link);
  // Browsers can copy only on encrypted pages, or on pages from the machine itself.
  if (!isSecureContext) return line;
  const copy = element('button', { type: 'button', className: 'place' }, 'Copy');
  copy.addEventListener('click', async () => {
    const isCopied = await navigator.clipboard.writeText(url).then(
      () => true,
      () => false,
    );
    copy.textContent = isCopied ? 'Copied' : 'Not copied: select the link';
  });
  line.appendChild(copy);
  return line;
}
