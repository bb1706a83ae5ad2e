import { CLASSES } from '../../worker/core/record/class.ts';
import { type ClassData, classDataOf } from '../../worker/core/record/classes/index.ts';
import { inEnglish, sayIn } from '../../worker/core/text/formatter.ts';
import { ENGLISH } from '../../worker/core/text/locale.ts';
import { termOf } from '../../worker/core/text/terms.ts';
import { type Html, html } from '../../worker/local/markup/html.ts';
import type { Page } from '../build/page.ts';
import { prose } from '../build/prose.ts';

const say = sayIn(ENGLISH);

/** Returns the English term of a value of the record. */
function termIn(value: string): string {
  const term = termOf(value);
  return typeof term === 'object' && 'message' in term ? inEnglish(term) : value;
}

const listed = (values: readonly string[]): string => values.map(termIn).join(', ');

const COMPUTES: Readonly<Record<ClassData['computes'][number], string>> = {
  'hang-position': 'position of the hang point for each crew',
  attachment: 'attachment for each front occupant',
  'cockpit-load': 'min. and max. cockpit load in each state',
  'hang-angle': 'hang angle and height of the centre of gravity',
  'both-axes': 'both axes at take-off and without fuel',
};

function limitsOf({ requires }: ClassData): string {
  if (!requires.envelope) return 'none required; used if stated';
  return requires.lateral ? 'envelope, and lateral limits or the statement that the manual has none' : 'envelope';
}

function fluidsOf({ canHaveFuel, canHaveOil }: ClassData): string {
  if (canHaveFuel && canHaveOil) return 'fuel and oil, unless the record has no tank or no sump';
  return canHaveFuel ? 'fuel' : 'neither fuel nor oil';
}

function cautionsOf({ cautions, waterCautions = [] }: ClassData): Html | string {
  const all = [
    ...cautions.map((caution) => say(caution)),
    ...waterCautions.map((caution) => `With water: ${say(caution)}`),
  ];
  return all.length > 0 ? row('Cautions', all.join(' ')) : '';
}

const row = (name: string, value: string): Html => html`<tr><th scope="row">${name}</th><td>${value}</td></tr>
`;

const classOf = (of: (typeof CLASSES)[number]): Html => {
  const data = classDataOf({ class: of });
  return html`<h2 id="${of}">${termIn(of)} <code>${of}</code></h2>
<table class="fields"><tbody>${row('Products with a log book or card', `airframe, ${listed(data.products)}`)}
${row('Controls', listed(data.axes))}
${row('Fluids', fluidsOf(data))}
${row('Limits of the centre of gravity', limitsOf(data))}
${data.computes.length > 0 ? row('Calculated as well', data.computes.map((each) => COMPUTES[each]).join('; ')) : ''}
${cautionsOf(data)}</tbody></table>`;
};

/** Page of the classes of aircraft, written from their data. */
export const classes: Page = {
  path: '/classes',
  title: 'Classes of aircraft',
  description: 'Products, controls, fluids and limits that follow from the class of an aircraft',
  body: html`${prose('classes')}
${CLASSES.map(classOf)}`,
};
