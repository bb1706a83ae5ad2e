// Fleet of a workshop: every aircraft, its current pack, and the visits in progress.
import { everyItem, ifThere, type Slipmark, SlipmarkProblem } from '../../worker/client/client.ts';
import { byId, element } from './element.ts';
import { type FleetLine, fleetLine } from './shop/fleet-line.ts';
import { overdueWords } from './shop/overdue.ts';
import { aircraftStanding } from './shop/pack-standing.ts';
import { said, withKey, wordsOf } from './shop/session.ts';
import { tableRow } from './shop/table.ts';
import { aircraftLink, readinessOf, visitLink } from './shop/words.ts';

/** Number of aircraft read at once: each needs a few requests. */
const AT_ONCE = 20;

/** Lines read so far, kept while the page is open. */
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

/** Fills one row after another, so that the first can be read while the last is loading. */
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

/** Returns the cells of an aircraft; an error is shown in its row and does not affect the others. */
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

/** Reads the line of an aircraft; for one with a pack, one more request for overdue items. */
async function lineOf(client: Slipmark, registration: string) {
  const line = await fleetLine(client, registration);
  if (!line) return undefined;
  const due = line.packs.length > 0 ? await ifThere(client.getDue({ registration })) : { body: NOTHING_DUE };
  return { ...line, overdue: overdueWords(due?.body) };
}

const NOTHING_DUE = { comingDue: [] };

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
