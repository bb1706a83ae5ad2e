import temml from 'temml';
import { Html, html } from '../../worker/local/markup/html.ts';

/** The policy of the site forbids styles inside an element; what temml writes there browsers do by themselves. */
const STYLE = / style="[^"]*"/g;

/** A number of five digits and more in groups of three, which stay one number for those who listen. */
export function grouped(number: string): string {
  return number.replace(/^\d{5,}/, (digits) => digits.replaceAll(/\B(?=(\d{3})+$)/g, '\u00a0'));
}

/** Signs of a formula from which it is too wide for a phone, and for a printed page at full size. */
const WIDTH = { phone: 24, page: 90 } as const;

const isLonger = (markup: string, signs: number): boolean => markup.replaceAll(/<[^>]+>/g, '').length > signs;

/** TeX as MathML, which browsers draw and read out by themselves. */
export function math(tex: string, display: 'inline' | 'block' = 'inline'): Html {
  const markup = temml.renderToString(tex, { displayMode: display === 'block', throwOnError: true, strict: true });
  const drawn = markup.replaceAll(STYLE, '').replaceAll(/(?<=<mn>)[\d.]+/g, grouped);
  return new Html(isLonger(drawn, WIDTH.page) ? drawn.replace('class="', 'class="long ') : drawn);
}

/** Lines of formulas and words in a frame, which the keyboard reaches where there is something to move sideways. */
export function frame(name: string, lines: readonly Html[]): Html {
  const isWide = lines.some(({ markup }) => markup.startsWith('<math') && isLonger(markup, WIDTH.phone));
  const stop = isWide ? new Html(' tabindex="0"') : '';
  return html`<div class="math" role="group" aria-label="${name}"${stop}>${lines}</div>`;
}
