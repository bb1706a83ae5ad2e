// One aircraft as its workshop sees it: what stands, what is in hand, what is due, its history, its packs and their links.
import { everyItem, ifThere, type Pack, type Slipmark } from '../../worker/client/client.ts';
import { printerFor } from '../../worker/units/print.ts';
import { localZone } from '../../worker/visit/local-zone.ts';
import type { VisitRecord } from '../../worker/visit/record.ts';
import { ENGLISH_LEXICON } from '../../worker/words/lexicon.ts';
import { element, there } from './element.ts';
import { startCsv } from './shop/csv-files.ts';
import { dueTable } from './shop/due-table.ts';
import { fleetLine } from './shop/fleet-line.ts';
import { historyFigures } from './shop/history.ts';
import { packRows } from './shop/packs-table.ts';
import { withKey } from './shop/session.ts';
import { table } from './shop/table.ts';
import { readinessOf, standingOf, stands, visitLink } from './shop/words.ts';
import { sayVerdict } from './verdict.ts';

const registration = new URLSearchParams(location.search).get('registration') ?? '';

withKey(async (client) => {
  if (registration === '') throw new Error('The address must name an aircraft, as /aircraft?registration=Q-SLM');
  const line = await fleetLine(client, registration);
  if (!line) throw new Error(`Nothing was kept of ${registration}`);
  const { newest, inHand } = line;
  there('which', HTMLElement).textContent = registration;
  const standing = newest ? standingOf(newest) : 'No pack was sealed yet.';
  sayVerdict(there('standing', HTMLElement), standing, newest !== null && stands(newest));
  const visits = inHand.map((visit) => [visitLink(registration, visit.visit), readinessOf(visit)]);
  there('in-hand', HTMLElement).replaceChildren(
    visits.length === 0 ? element('p', {}, 'None.') : table(['Visit', 'How far it is'], visits),
  );
  await showPacks(client);
  if (newest) await showPapers(client, newest);
  else for (const id of ['due', 'history']) there(id, HTMLElement).textContent = 'It comes with the first pack.';
  startCsv(client, registration, newest);
});

async function showPacks(client: Slipmark): Promise<void> {
  const packs: Pack[] = [];
  for await (const pack of everyItem(client.listAircraftPacks, { registration })) packs.push(pack);
  there('packs', HTMLElement).replaceChildren(...packRows(client, packs));
}

async function showPapers(client: Slipmark, { pack }: Pack): Promise<void> {
  const { bytes } = await client.getPackRecord({ pack });
  const record = JSON.parse(new TextDecoder().decode(bytes)) as VisitRecord;
  const say = printerFor(record.units, ENGLISH_LEXICON, localZone(record));
  const due = await ifThere(client.getDue({ registration }));
  if (due) there('due', HTMLElement).replaceChildren(...dueTable(due.body, record, say));
  const baseline = await ifThere(client.getBaseline({ pack }));
  if (baseline) there('history', HTMLElement).replaceChildren(...historyFigures(baseline.body, say));
}
