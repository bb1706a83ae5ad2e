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
import { browserLexicon } from '../../worker/words/browser-lexicon.ts';

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
  const say = printerFor(facts.units, browserLexicon(document.documentElement.lang));
  const asked = fieldsFor(facts, say);
  form.replaceChildren(...asked.map((field) => fieldElement(field, say)));
  const envelope = facts.aircraft.envelope && envelopeOf(facts.aircraft.envelope);
  const update = (): void => {
    const values = new FormData(form);
    if ([...values.values()].every((value) => value === '')) {
      invite(answer, chart, say);
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
function invite(answer: HTMLElement, chart: HTMLElement, say: Printer): void {
  answer.replaceChildren(paragraph(say.words`Type in who and what goes aboard, the fuel, and what the flight burns.`));
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
    return { id, name: say.words`${name}, usable fuel`, unit: say.unit('volume'), most, kgPerUnit: l * densityKgPerL };
  });
  const [first] = tanks;
  const burnt = {
    id: BURN,
    name: say.words`Fuel burnt on the flight`,
    unit: first?.unit ?? '',
    kgPerUnit: first?.kgPerUnit ?? 0,
  };
  const mostBurnt = tanks.reduce((sum, { most }) => sum + most, 0);
  return [...seats, ...tanks, ...(first ? [{ ...burnt, most: mostBurnt }] : [])];
}

function fieldElement({ id, name, unit, most }: Asked, say: Printer): HTMLElement {
  const label = document.createElement('label');
  const input = document.createElement('input');
  const shown = Math.floor(most * 10) / 10;
  for (const child of [
    document.createTextNode(`${name}, ${unit} `),
    hint(say.words`at most ${say.asIs(shown)}`),
    input,
  ])
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
  head.textContent = headline(check.verdict, facts, say);
  const { takeOff, landing } = check;
  const hasArms = facts.aircraft.envelope !== undefined;
  const state = (name: string, at: { massKg: number; momentKgMm: number }): string =>
    hasArms
      ? say.words`${name}: ${say.measure('mass', at.massKg)} at ${say.measure('arm', cgMm(at))}`
      : `${name}: ${say.measure('mass', at.massKg)}`;
  const lines = [
    say.words`${state(say.words`Take-off`, takeOff)}. Maximum ${say.measure('mass', facts.aircraft.maximumMassKg)}.`,
    landing ? `${state(say.words`After the planned burn`, landing)}.` : say.words`More is to be burnt than is aboard.`,
    ...cureLines(check.cures, say, asked),
  ];
  return [head, ...lines.map(paragraph)];
}

function headline(verdict: Verdict, { aircraft }: LoadingFacts, say: Printer): string {
  if (verdict.state === 'inside') return say.words`Inside, until the fuel is gone`;
  if (verdict.state === 'too-heavy') return say.words`Too heavy by ${say.measure('mass', verdict.overKg)}`;
  if (verdict.state === 'limit-exceeded') {
    const limit = limitName(verdict.limit, aircraft) ?? say.term(verdict.limit);
    return say.words`Over the limit of ${limit} by ${say.measure('mass', verdict.overKg)}`;
  }
  const { side, margin } = verdict.worst;
  const [byMass, byArm] = [say.measure('mass', -margin), say.measure('arm', -margin)];
  if (side === 'below') return say.words`Outside: below the masses of the envelope by ${byMass}`;
  if (side === 'above') return say.words`Outside: above the masses of the envelope by ${byMass}`;
  return side === 'forward'
    ? say.words`Outside: ${byArm} beyond the forward limit at some point of the flight`
    : say.words`Outside: ${byArm} beyond the aft limit at some point of the flight`;
}

/** What a limit is called in the record. */
function limitName(limit: string, { stations, loadingLimits = [] }: LoadingFacts['aircraft']): string | undefined {
  return stations.find(({ id }) => id === limit)?.name ?? loadingLimits.find(({ id }) => id === limit)?.text;
}

/** What would bring it inside, in the units of the field that it is typed into. */
function cureLines(cures: readonly Cure[], say: Printer, asked: readonly Asked[]): string[] {
  return cures.map(({ station, byKg }) => {
    const field = asked.find(({ id }) => id === station);
    const amount = Math.ceil((Math.abs(byKg) / (field?.kgPerUnit ?? 1)) * 10) / 10;
    const [name, much] = [field?.name ?? station, `${say.asIs(amount)} ${field?.unit ?? say.unit('mass')}`];
    return byKg < 0
      ? say.words`Inside with less on ${name}: ${much}.`
      : say.words`Inside with more on ${name}: ${much}.`;
  });
}

function drawChart(chart: HTMLElement, { path, takeOff }: LoadingCheck, facts: LoadingFacts, say: Printer): void {
  const { envelope: corners, maximumMassKg } = facts.aircraft;
  chart.hidden = corners === undefined;
  if (!corners) return;
  const label = say.words`Take-off at ${say.measure('mass', takeOff.massKg)} and ${say.measure('arm', cgMm(takeOff))} in the envelope.`;
  const picture = {
    corners,
    maximumMassKg,
    empty: facts.empty,
    ways: [{ name: say.words`take-off`, path }],
    say,
    label,
  };
  chart.innerHTML = envelopeDrawing(picture);
}
