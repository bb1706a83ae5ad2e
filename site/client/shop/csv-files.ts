import { everyItem, ifThere, type LedgerEntry, type Pack, type Slipmark } from '../../../worker/client/client.ts';
import { csvFromItems, csvFromLedger, type Item } from '../../../worker/csv/csv.ts';
import { there } from '../element.ts';
import { fetchFile } from './fetch-file.ts';
import { onClick } from './on-click.ts';

const TYPE = 'text/csv;charset=utf-8';

/** Tables for spreadsheets: the equipment list as the newest pack leaves it, and the ledger. */
export function startCsv(client: Slipmark, registration: string, newest: Pack | null): void {
  const equipment = there('equipment-csv', HTMLButtonElement);
  const ledger = there('ledger-csv', HTMLButtonElement);
  equipment.disabled = newest === null;
  ledger.disabled = false;
  if (newest) onClick(equipment, () => equipmentCsv(client, newest));
  onClick(ledger, () => ledgerCsv(client, registration));
}

async function equipmentCsv(client: Slipmark, { pack }: Pack): Promise<void> {
  const baseline = await ifThere(client.getBaseline({ pack }));
  const record = await client.getPackRecord({ pack });
  const { units } = JSON.parse(new TextDecoder().decode(record.bytes));
  const items = (baseline?.body.equipment ?? []) as unknown as Item[];
  fetchFile(csvFromItems('equipment', items, units), `${pack}-equipment.csv`, TYPE);
}

async function ledgerCsv(client: Slipmark, registration: string): Promise<void> {
  const entries: LedgerEntry[] = [];
  for await (const entry of everyItem(client.listLedger, { registration })) entries.push(entry);
  fetchFile(csvFromLedger(entries), `${registration}-ledger.csv`, TYPE);
}
