import temml from 'temml';
import { Html } from '../html.ts';

/** The policy of the site forbids styles inside an element; cells of a table get theirs from the sheet. */
const STYLE = / style="[^"]*"/g;

/** A number of five digits and more in groups of three, without breaking it into several numbers for those who listen. */
const grouped = (markup: string): string =>
  markup.replaceAll(/<mn>(\d{5,})/g, (_, digits: string) => `<mn>${digits.replaceAll(/\B(?=(\d{3})+$)/g, '\u00a0')}`);

/** TeX as MathML, which browsers draw and read out by themselves. */
export function math(tex: string, display: 'inline' | 'block' = 'inline'): Html {
  const markup = temml.renderToString(tex, { displayMode: display === 'block', throwOnError: true, strict: true });
  return new Html(grouped(markup.replaceAll(STYLE, '')));
}
