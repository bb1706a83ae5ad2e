import temml from 'temml';
import { Html } from '../html.ts';

/** The policy of the site forbids styles inside an element; cells of a table get theirs from the sheet. */
const STYLE = / style="[^"]*"/g;

/** A number of five digits and more in groups of three, which stay one number for those who listen. */
export function grouped(number: string): string {
  return number.replace(/^\d{5,}/, (digits) => digits.replaceAll(/\B(?=(\d{3})+$)/g, '\u00a0'));
}

/** Whether a formula is too long for a printed page at full size. */
const isLong = (markup: string): boolean => markup.replaceAll(/<[^>]+>/g, '').length > 90;

/** TeX as MathML, which browsers draw and read out by themselves. */
export function math(tex: string, display: 'inline' | 'block' = 'inline'): Html {
  const markup = temml.renderToString(tex, { displayMode: display === 'block', throwOnError: true, strict: true });
  const drawn = markup.replaceAll(STYLE, '').replaceAll(/(?<=<mn>)[\d.]+/g, grouped);
  return new Html(isLong(drawn) ? drawn.replace('class="', 'class="long ') : drawn);
}
