import { type Cure, checkLoading, type LoadingCheck } from '../../worker/calc/loading/check.ts';
import { envelopeOf } from '../../worker/calc/loading/envelope.ts';
import type { Verdict } from '../../worker/calc/loading/verdict.ts';
import { cgMm } from '../../worker/calc/mass-moment.ts';
import { envelopeDrawing } from '../../worker/pack/chart/envelope-drawing.ts';
import type { LoadingFacts } from '../../worker/pack/loading-facts.ts';
import { type Printer, printerFor } from '../../worker/units/print.ts';
import { browserLexicon } from '../../worker/words/browser-lexicon.ts';
import { element } from './element.ts';
import { type Asked, BURN, fieldElement, fieldsFor, readFields } from './loading/fields.ts';

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
    const { isEmpty, kg, unread } = readFields(form, asked);
    if (isEmpty || unread.length > 0) {
      // What is not read counts for nothing, so there is nothing to judge by.
      const words = isEmpty ? invitation(say) : unread.map(({ name }) => unreadLine(name, say));
      answer.replaceChildren(...words.map(paragraph));
      answer.className = `loading-answer ${isEmpty ? '' : 'outside'}`;
      chart.hidden = true;
      return;
    }
    const { [BURN]: burnKg = 0, ...load } = kg;
    const check = checkLoading(facts.aircraft, facts.empty, { load, burnKg, envelope });
    answer.replaceChildren(...answerElements(check, { facts, say, asked, burnKg }));
    answer.className = `loading-answer ${isInside(check) ? 'inside' : 'outside'}`;
    drawChart(chart, check, facts, say);
  };
  form.addEventListener('input', update);
  form.addEventListener('submit', (event) => event.preventDefault());
  update();
}

/** Before anything is typed there is no loading to judge. */
const invitation = (say: Printer): string[] => [
  say.words`Type in who and what goes aboard, the fuel, and what the flight burns.`,
];

const unreadLine = (name: string, say: Printer): string =>
  say.words`Not judged: ${name} is not a number that can be read. Type it as 85 or ${say.asIs(8.5)}.`;

const paragraph = (text: string): HTMLElement => element('p', {}, text);

/** A flight that needs more fuel than is aboard is none, wherever its points lie. */
const isInside = ({ verdict, landing }: LoadingCheck): boolean => verdict.state === 'inside' && landing !== undefined;

/** What an answer is said from. */
interface Answered {
  facts: LoadingFacts;
  say: Printer;
  asked: readonly Asked[];
  burnKg: number;
}

function answerElements(check: LoadingCheck, { facts, say, asked, burnKg }: Answered): HTMLElement[] {
  const { takeOff, landing, verdict } = check;
  const tooLittle = say.words`More is to be burnt than is aboard.`;
  const isInsideButDry = verdict.state === 'inside' && landing === undefined;
  const hasArms = facts.aircraft.envelope !== undefined;
  const state = (name: string, at: { massKg: number; momentKgMm: number }): string =>
    hasArms
      ? say.words`${name}: ${say.measure('mass', at.massKg)} at ${say.measure('arm', cgMm(at))}`
      : `${name}: ${say.measure('mass', at.massKg)}`;
  const burnt = landing ? `${state(say.words`After the planned burn`, landing)}.` : tooLittle;
  const lines = [
    say.words`${state(say.words`Take-off`, takeOff)}. Maximum ${say.measure('mass', facts.aircraft.maximumMassKg)}.`,
    ...(burnKg === 0 || isInsideButDry ? [] : [burnt]),
    ...cureLines(check.cures, say, asked),
  ];
  const head = isInsideButDry ? tooLittle : headline(verdict, facts, say);
  return [element('h3', {}, head), ...lines.map(paragraph)];
}

function headline(verdict: Verdict, { aircraft }: LoadingFacts, say: Printer): string {
  if (verdict.state === 'inside' && !aircraft.envelope)
    return say.words`Within its masses; there is no envelope to judge the balance by`;
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
