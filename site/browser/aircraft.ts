// One aircraft of a workshop: current pack, visits in progress, open items, history, packs and links.
import { ifThere, type Slipmark } from '../../worker/client/client.ts';
import { localZone } from '../../worker/core/record/local-zone.ts';
import { formatterFor } from '../../worker/core/text/formatter.ts';
import { ENGLISH } from '../../worker/core/text/locale.ts';
import { byId, element } from './element.ts';
import { recordOfPack } from './record-of-pack.ts';
import { startCsv } from './shop/csv-files.ts';
import { dueTable } from './shop/due-table.ts';
import { fleetLine } from './shop/fleet-line.ts';
import { historyFigures } from './shop/history.ts';
import { aircraftStanding, packCountedFrom, packStanding } from './shop/pack-standing.ts';
import { packRows } from './shop/packs-table.ts';
import { withKey } from './shop/session.ts';
import { table } from './shop/table.ts';
import { readinessOf, visitLink } from './shop/words.ts';
import { showVerdict } from './show-verdict.ts';

const registration = new URLSearchParams(location.search).get('registration') ?? '';

withKey(async (client) => {
  if (registration === '') throw new Error('The address must name an aircraft, as /aircraft?registration=Q-SLM');
  const line = await fleetLine(client, registration);
  if (!line) throw new Error(`Nothing was kept of ${registration}`);
  const { packs, inHand } = line;
  byId('which', HTMLElement).textContent = registration;
  const standing = aircraftStanding(packs);
  showVerdict(byId('standing', HTMLElement), standing.words, standing.isGood);
  const visits = inHand.map((visit) => [visitLink(registration, visit.visit), readinessOf(visit)]);
  byId('in-hand', HTMLElement).replaceChildren(
    visits.length === 0 ? element('p', {}, 'None.') : table(['Visit', 'How far it is'], visits),
  );
  byId('packs', HTMLElement).replaceChildren(...packRows(client, packs));
  const pack = packCountedFrom(packs);
  if (pack) await showPapers(client, pack.pack, packStanding(pack, packs).kind === 'stands');
  else for (const id of ['due', 'history']) byId(id, HTMLElement).textContent = 'It comes with the first pack.';
  startCsv(client, registration, pack);
});

async function showPapers(client: Slipmark, pack: string, isStanding: boolean): Promise<void> {
  const record = await recordOfPack(client, pack);
  const fmt = formatterFor(record.units, ENGLISH, localZone(record));
  const due = await ifThere(client.getDue({ registration }));
  byId('due', HTMLElement).replaceChildren(
    ...(due
      ? dueTable(due.body, record, fmt)
      : [element('p', {}, `Not known: the record of ${pack} can no longer be read. See the pack.`)]),
  );
  const baseline = await ifThere(client.getBaseline({ pack }));
  byId('history', HTMLElement).replaceChildren(...historyFigures(baseline?.body, { pack, stands: isStanding }, fmt));
}
