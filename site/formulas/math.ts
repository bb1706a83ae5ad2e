import temml from 'temml';
import { Html, html } from '../../worker/local/markup/html.ts';

/** Inline styles from temml: the content security policy forbids them, and browsers apply the same by default. */
const STYLE = / style="[^"]*"/g;

/** Returns a number with five or more digits in groups of three, which screen readers still read as one number. */
export function grouped(number: string): string {
  return number.replace(/^\d{5,}/, (digits) => digits.replaceAll(/\B(?=(\d{3})+$)/g, '\u00a0'));
}

/** Number of signs from which a formula is too wide for a phone, and for a printed page at full size. */
const WIDTH = { phone: 24, page: 90 } as const;

const isLonger = (markup: string, signs: number): boolean => markup.replaceAll(/<[^>]+>/g, '').length > signs;

/** Converts TeX to MathML, which browsers draw and read out without a script. */
export function math(tex: string, display: 'inline' | 'block' = 'inline'): Html {
  const markup = temml.renderToString(tex, { displayMode: display === 'block', throwOnError: true, strict: true });
  const drawn = markup.replaceAll(STYLE, '').replaceAll(/(?<=<mn>)[\d.]+/g, grouped);
  return new Html(isLonger(drawn, WIDTH.page) ? drawn.replace('class="', 'class="long ') : drawn);
}

/** Returns lines of formulas and words in a frame that can be scrolled by keyboard. */
export function frame(name: string, lines: readonly Html[]): Html {
  const isWide = lines.some(({ markup }) => markup.startsWith('<math') && isLonger(markup, WIDTH.phone));
  const stop = isWide ? new Html(' tabindex="0"') : '';
  return html`<div class="math" role="group" aria-label="${name}"${stop}>${lines}</div>`;
}
