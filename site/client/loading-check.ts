import { tanksOf } from '../../worker/calc/fuel.ts';
import { type Cure, checkLoading, type LoadingCheck } from '../../worker/calc/loading/check.ts';
import { envelopeOf } from '../../worker/calc/loading/envelope.ts';
import { loadStationsOf } from '../../worker/calc/loading/load-space.ts';
import type { Verdict } from '../../worker/calc/loading/verdict.ts';
import { cgMm } from '../../worker/calc/mass-moment.ts';
import { envelopeDrawing } from '../../worker/pack/chart/envelope-drawing.ts';
import type { LoadingFacts } from '../../worker/pack/loading-facts.ts';
import { type Printer, printerFor } from '../../worker/units/print.ts';
import { factorOf } from '../../worker/units/quantity.ts';

const BURN = 'burn';

/** One line of the form: what is asked for, in which unit, and at most how much. */
interface Asked {
  id: string;
  name: string;
  unit: string;
  most: number;
  /** kg in one unit of the field. */
  kgPerUnit: number;
}

/** Lets the owner work out loadings with the code of the pack: everything follows as figures are typed. */
export function startLoadingCheck(facts: LoadingFacts): void {
  const form = document.querySelector<HTMLFormElement>('#loading-form');
  const answer = document.querySelector<HTMLElement>('#loading-answer');
  const chart = document.querySelector<HTMLElement>('#loading-chart');
  if (!form || !answer || !chart) return;
  const say = printerFor(facts.units);
  const asked = fieldsFor(facts, say);
  form.replaceChildren(...asked.map(fieldElement));
  const envelope = facts.aircraft.envelope && envelopeOf(facts.aircraft.envelope);
  const update = (): void => {
    const values = new FormData(form);
    if ([...values.values()].every((value) => value === '')) {
      invite(answer, chart);
      return;
    }
    const kgOf = ({ id, kgPerUnit }: Asked): number => Math.max(0, Number(values.get(id)) || 0) * kgPerUnit;
    const stations = asked.filter(({ id }) => id !== BURN);
    const load = Object.fromEntries(stations.map((field) => [field.id, kgOf(field)]));
    const burn = asked.find(({ id }) => id === BURN);
    const check = checkLoading(facts.aircraft, facts.empty, { load, burnKg: burn ? kgOf(burn) : 0, envelope });
    answer.replaceChildren(...answerElements(check, facts, say, asked));
    answer.className = `loading-answer ${check.verdict.state === 'inside' ? 'inside' : 'outside'}`;
    drawChart(chart, check, facts, say);
  };
  form.addEventListener('input', update);
  form.addEventListener('submit', (event) => event.preventDefault());
  update();
}

/** Before anything is typed there is no loading to judge. */
function invite(answer: HTMLElement, chart: HTMLElement): void {
  answer.replaceChildren(paragraph('Type in who and what goes aboard, the fuel, and what the flight burns.'));
  answer.className = 'loading-answer';
  chart.hidden = true;
}

function paragraph(text: string): HTMLElement {
  const element = document.createElement('p');
  element.textContent = text;
  return element;
}

function fieldsFor({ aircraft, units }: LoadingFacts, say: Printer): Asked[] {
  const [kg, l] = [factorOf('mass', units), factorOf('volume', units)];
  const seats = loadStationsOf(aircraft).map(({ id, name, maximumMassKg }) => {
    const most = maximumMassKg / kg;
    return { id, name, unit: say.unit('mass'), most, kgPerUnit: kg };
  });
  const tanks = tanksOf(aircraft).map(({ id, name, capacityL, unusableL, densityKgPerL }) => {
    const most = Math.max(0, capacityL - unusableL) / l;
    return { id, name: `${name}, usable fuel`, unit: say.unit('volume'), most, kgPerUnit: l * densityKgPerL };
  });
  const [first] = tanks;
  const burnt = {
    id: BURN,
    name: 'Fuel burnt on the flight',
    unit: first?.unit ?? '',
    kgPerUnit: first?.kgPerUnit ?? 0,
  };
  const mostBurnt = tanks.reduce((sum, { most }) => sum + most, 0);
  return [...seats, ...tanks, ...(first ? [{ ...burnt, most: mostBurnt }] : [])];
}

function fieldElement({ id, name, unit, most }: Asked): HTMLElement {
  const label = document.createElement('label');
  const input = document.createElement('input');
  const shown = Math.floor(most * 10) / 10;
  for (const child of [document.createTextNode(`${name}, ${unit} `), hint(`at most ${shown}`), input])
    label.appendChild(child);
  Object.assign(input, { type: 'number', name: id, min: '0', step: 'any', inputMode: 'decimal', placeholder: '0' });
  input.max = String(shown);
  return label;
}

function hint(text: string): HTMLElement {
  const small = document.createElement('small');
  small.textContent = text;
  return small;
}

function answerElements(
  check: LoadingCheck,
  facts: LoadingFacts,
  say: Printer,
  asked: readonly Asked[],
): HTMLElement[] {
  const head = document.createElement('h3');
  head.textContent = headline(check.verdict, say);
  const { takeOff, landing } = check;
  const hasArms = facts.aircraft.envelope !== undefined;
  const state = (name: string, at: { massKg: number; momentKgMm: number }): string =>
    `${name}: ${say.measure('mass', at.massKg)}${hasArms ? ` at ${say.measure('arm', cgMm(at))}` : ''}`;
  const lines = [
    `${state('Take-off', takeOff)}. Maximum ${say.measure('mass', facts.aircraft.maximumMassKg)}.`,
    landing ? `${state('After the planned burn', landing)}.` : 'More is to be burnt than is aboard.',
    ...cureLines(check.cures, say, asked),
  ];
  return [head, ...lines.map(paragraph)];
}

function headline(verdict: Verdict, say: Printer): string {
  if (verdict.state === 'inside') return 'Inside, until the fuel is gone';
  if (verdict.state === 'too-heavy') return `Too heavy by ${say.measure('mass', verdict.overKg)}`;
  if (verdict.state === 'limit-exceeded')
    return `Over the limit of ${verdict.limit} by ${say.measure('mass', verdict.overKg)}`;
  const { side, margin } = verdict.worst;
  if (side === 'below' || side === 'above')
    return `Outside: ${side} the masses of the envelope by ${say.measure('mass', -margin)}`;
  return `Outside: ${say.measure('arm', -margin)} beyond the ${side} limit at some point of the flight`;
}

/** What would bring it inside, in the units of the field that it is typed into. */
function cureLines(cures: readonly Cure[], say: Printer, asked: readonly Asked[]): string[] {
  return cures.map(({ station, byKg }) => {
    const field = asked.find(({ id }) => id === station);
    const amount = Math.ceil((Math.abs(byKg) / (field?.kgPerUnit ?? 1)) * 10) / 10;
    const doing = byKg < 0 ? 'Inside with less' : 'Inside with more';
    return `${doing} on ${field?.name ?? station}: ${amount} ${field?.unit ?? say.unit('mass')}.`;
  });
}

function drawChart(chart: HTMLElement, { path, takeOff }: LoadingCheck, facts: LoadingFacts, say: Printer): void {
  const { envelope: corners, maximumMassKg } = facts.aircraft;
  chart.hidden = corners === undefined;
  if (!corners) return;
  const label = `Take-off at ${say.measure('mass', takeOff.massKg)} and ${say.measure('arm', cgMm(takeOff))} in the envelope.`;
  const picture = {
    corners,
    maximumMassKg,
    empty: facts.empty,
    ways: [{ name: 'take-off', path }],
    say,
    label,
  };
  chart.innerHTML = envelopeDrawing(picture);
}
