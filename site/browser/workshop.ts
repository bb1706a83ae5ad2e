// The fleet of a workshop: every aircraft, what stands for it, and the visits in hand with how far they are.
import { everyItem, ifThere, type Slipmark, SlipmarkProblem } from '../../worker/client/client.ts';
import { byId, element } from './element.ts';
import { type FleetLine, fleetLine } from './shop/fleet-line.ts';
import { overdueWords } from './shop/overdue.ts';
import { aircraftStanding } from './shop/pack-standing.ts';
import { said, withKey, wordsOf } from './shop/session.ts';
import { tableRow } from './shop/table.ts';
import { aircraftLink, readinessOf, visitLink } from './shop/words.ts';

/** Aircraft that are read at once: each takes a few requests. */
const AT_ONCE = 20;

/** What was read of an aircraft stays for the time that the page is open. */
const read = new Map<string, (FleetLine & { overdue: string | undefined }) | undefined>();

withKey(async (client) => {
  read.clear();
  const registrations: string[] = [];
  for await (const { registration } of everyItem(client.listAircraft, {})) registrations.push(registration);
  const search = byId('search', HTMLInputElement);
  const more = byId('more', HTMLButtonElement);
  let shown = AT_ONCE;
  let asked = 0;
  const draw = async (): Promise<void> => {
    const turn = ++asked;
    const wanted = registrations.filter((registration) => registration.includes(search.value.trim().toUpperCase()));
    byId('count', HTMLElement).textContent = `${wanted.length} of ${registrations.length} aircraft`;
    more.hidden = wanted.length <= shown;
    await fill(client, wanted.slice(0, shown), () => turn === asked);
  };
  search.oninput = () => said(draw());
  more.onclick = () => {
    shown += AT_ONCE;
    said(draw());
  };
  await draw();
});

/** One row after another, so that the first can be read while the last is asked for. */
async function fill(client: Slipmark, registrations: readonly string[], isWanted: () => boolean): Promise<void> {
  const body = byId('fleet', HTMLTableSectionElement);
  const heads = [...(body.parentElement?.querySelectorAll('thead th') ?? [])].map((head) => head.textContent ?? '');
  const rowOf = (cells: readonly (Node | string)[]): HTMLElement => tableRow(cells, heads);
  body.replaceChildren(...registrations.map((registration) => rowOf([aircraftLink(registration), 'being read', ''])));
  for (const [index, registration] of registrations.entries()) {
    const line = await cellsOf(client, registration);
    if (!isWanted()) return;
    body.children[index]?.replaceWith(rowOf(line));
  }
}

/** What cannot be read of one aircraft keeps nobody from the others. */
async function cellsOf(client: Slipmark, registration: string): Promise<(Node | string)[]> {
  try {
    if (!read.has(registration)) read.set(registration, await lineOf(client, registration));
  } catch (error) {
    if (error instanceof SlipmarkProblem && (error.status === 401 || error.status === 0)) throw error;
    return [aircraftLink(registration), `could not be read: ${wordsOf(error)}`, 'not known'];
  }
  const line = read.get(registration);
  return line ? cellsOfLine(line) : [registration, 'nothing was kept of it', 'none'];
}

/** One question more for an aircraft with a pack: what is overdue on it. */
async function lineOf(client: Slipmark, registration: string) {
  const line = await fleetLine(client, registration);
  if (!line) return undefined;
  const due = line.packs.length > 0 ? await ifThere(client.getDue({ registration })) : { body: NOTHING_DUE };
  return { ...line, overdue: overdueWords(due?.body) };
}

const NOTHING_DUE = { items: [], deferred: [] };

function cellsOfLine({
  registration,
  packs,
  inHand,
  overdue,
}: FleetLine & { overdue: string | undefined }): (Node | string)[] {
  const visits = inHand.map((visit) => {
    return element('li', {}, visitLink(registration, visit.visit), `: ${readinessOf(visit)}`);
  });
  const late = overdue === undefined ? [] : ['; ', element('strong', {}, overdue)];
  return [
    aircraftLink(registration),
    element('span', {}, packs.length > 0 ? aircraftStanding(packs).words : 'no pack yet', ...late),
    visits.length === 0 ? 'none' : element('ul', { className: 'plain' }, ...visits),
  ];
}
