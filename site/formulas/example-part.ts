import { codeIn, type Html, html } from '../../worker/local/markup/html.ts';
import type { Example, Formula, Quantity } from './formula.ts';
import { frame, grouped, math } from './math.ts';
import { cut, type Worked, worked } from './put-in.ts';

/** Returns the gap before a unit: none before degrees. */
const gapTo = (unit: string, gap: string): string => (unit === '' || unit === '°' ? '' : gap);

/** Returns the unit of a number, in upright letters. */
const unitTex = (unit: string): string =>
  unit === '' ? '' : `${gapTo(unit, '\\,')}\\text{${unit.replace('%', '\\%')}}`;

const lineOf = ({ left, right, relation, result, unit }: Worked): Html =>
  // A number that is also the result is printed once.
  math(`${left} ${/^\{[\d.]+\}$/.test(right) ? '' : `= ${right}`} ${relation} ${result}${unitTex(unit)}`, 'block');

function printed(value: number): string {
  const text = grouped(String(cut(Math.abs(value), 'given')));
  return value < 0 ? `−${text}` : text;
}

/** Returns the common part of numbered symbols: `m` of `m_2`; undefined for others, and for a former value, `m_0`. */
const seriesOf = (symbol: string): string | undefined => /^(.*)_[1-9]\d*$/.exec(symbol)?.[1];

/** Returns the values of one symbol, or of the symbols `m_1`, `m_2` … in one line. */
function givenOf(entries: readonly (readonly [string, Quantity])[]): Html {
  const [first] = entries;
  if (!first) return html``;
  const [symbol, [, unit]] = first;
  const symbols = entries.map(([each]) => each);
  const names = entries.length > 2 ? `${symbol}, \\ldots, ${symbols.at(-1)}` : symbols.join(', ');
  const values = entries.map(([, [value]]) => printed(value)).join(', ');
  return html`<li>${math(names)} = ${values}${gapTo(unit, ' ')}${unit}</li>
`;
}

/** Returns the input of an example as a list: a run of numbered symbols with one unit is one line. */
function givenList({ given }: Example): Html {
  const lines = Map.groupBy(Object.entries(given), ([symbol, [, unit]]) => `${seriesOf(symbol) ?? symbol} ${unit}`);
  return lines.size === 0 ? html`` : html`<ul class="given">${[...lines.values()].map(givenOf)}</ul>`;
}

/** Returns a worked example: the input, and every line with the numbers inserted. */
export function exampleOf(formula: Formula): Html {
  const example = formula.example();
  const lines = worked(example);
  const parts = example.steps.map((step) => {
    const line = 'tex' in step ? lines.get(step) : undefined;
    return line ? lineOf(line) : html`<p>${'say' in step ? codeIn(step.say) : ''}</p>`;
  });
  const published =
    example.case === undefined ? '' : html`, <a href="/checks#${example.case}">case ${example.case}</a>`;
  return html`<div class="worked"><p class="label">Worked example${published}</p>
${givenList(example)}
${frame('Computation', parts)}</div>`;
}
