import { envelopeCorners } from '../../worker/core/calc/loading/aircraft-envelope.ts';
import type { LoadingCheck } from '../../worker/core/calc/loading/check.ts';
import { cgMm } from '../../worker/core/calc/mass/mass-moment.ts';
import { envelopeDrawing } from '../../worker/core/pack/chart/envelope-drawing.ts';
import type { LoadingFacts } from '../../worker/core/pack/loading-facts.ts';
import { type Formatter, formatterFor } from '../../worker/core/text/formatter.ts';
import * as m from '../../worker/core/text/generated/messages.ts';
import { languageOf } from '../../worker/core/text/languages.ts';
import { localeOf } from '../../worker/core/text/locale.ts';
import { element } from './element.ts';
import { answerTo } from './loading/answer.ts';
import { fieldsFor } from './loading/fields.ts';
import { fieldElement, markForm, readForm } from './loading/form.ts';

/**
 * Starts the owner's loading check, which uses the code of the pack and calculates as figures are typed; of an aircraft
 * with several configurations, for the one that is chosen.
 */
export function startLoadingCheck(facts: LoadingFacts): void {
  const choices = [facts, ...(facts.others ?? [])];
  const form = document.querySelector<HTMLFormElement>('#loading-form');
  if (choices.length > 1 && form) {
    const { choice, field } = choiceOf(choices, facts);
    form.insertAdjacentElement('beforebegin', field);
    choice.addEventListener('change', () => check(choices[choice.selectedIndex] ?? facts));
  }
  check(facts);
}

/** Returns the list of configurations, with its label. */
function choiceOf(
  choices: readonly LoadingFacts[],
  facts: LoadingFacts,
): { choice: HTMLSelectElement; field: HTMLElement } {
  const fmt = formatterOf(facts);
  const id = 'loading-configuration';
  const choice = element('select', { id }, ...choices.map(({ name = '' }) => element('option', {}, name)));
  const label = element('label', { htmlFor: id }, fmt.text(m.loadingCheck_configuration));
  return { choice, field: element('p', {}, label, ' ', choice) };
}

const formatterOf = ({ units }: LoadingFacts): Formatter =>
  formatterFor(units, localeOf(languageOf(document.documentElement.lang)));

let stop = new AbortController();

function check(facts: LoadingFacts): void {
  stop.abort();
  stop = new AbortController();
  const { signal } = stop;
  const form = document.querySelector<HTMLFormElement>('#loading-form');
  const answer = document.querySelector<HTMLElement>('#loading-answer');
  const chart = document.querySelector<HTMLElement>('#loading-chart');
  if (!form || !answer || !chart) return;
  const fmt = formatterOf(facts);
  const asked = fieldsFor(facts, fmt);
  const before = new Map([...form.querySelectorAll('input')].map(({ name, value }) => [name, value]));
  form.replaceChildren(...asked.map((field) => fieldElement(field, fmt)));
  // What was typed for another configuration stays, where this one has the same field.
  for (const input of form.querySelectorAll('input')) input.value = before.get(input.name) ?? '';
  const update = (): void => {
    const typed = readForm(form, asked);
    const { tone, head, lines, check, station } = answerTo(typed, facts, asked, fmt);
    markForm(form, asked, { typed, station }, fmt);
    const title = element(check ? 'h3' : 'p', {}, head);
    answer.replaceChildren(title, ...lines.map((line) => element('p', {}, line)));
    answer.className = `loading-answer ${tone}`;
    if (check) drawChart(chart, check, facts, fmt);
    else chart.hidden = true;
  };
  form.addEventListener('input', update, { signal });
  form.addEventListener('submit', (event) => event.preventDefault(), { signal });
  update();
}

function drawChart(chart: HTMLElement, { takeOff, path }: LoadingCheck, facts: LoadingFacts, fmt: Formatter): void {
  const { maximumMassKg } = facts.aircraft;
  const corners = envelopeCorners(facts.aircraft);
  chart.hidden = corners === undefined;
  if (!corners) return;
  const label = fmt.text(m.loadingCheck_takeOffEnvelope, {
    mass: fmt.measure('mass', takeOff.massKg),
    cg: fmt.measure('arm', cgMm(takeOff)),
  });
  const picture = {
    corners,
    maximumMassKg,
    empty: facts.empty,
    ways: [{ name: fmt.text(m.loadingCheck_takeOff), path }],
    fmt,
    label,
  };
  chart.innerHTML = envelopeDrawing(picture);
}
