import { everyItem, ifThere, type LedgerEntry, type Pack, type Slipmark } from '../../../worker/client/client.ts';
import { csvFromItems, csvFromLedger, type Item } from '../../../worker/local/tables/csv.ts';
import { byId } from '../element.ts';
import { recordOfPack } from '../record-of-pack.ts';
import { fetchFile } from './fetch-file.ts';
import { onClickOnce } from './on-click-once.ts';

const TYPE = 'text/csv;charset=utf-8';

/**
 * Starts the downloads for spreadsheets: the equipment list after a pack, and the ledger.
 *
 * @param pack undefined if none was sealed; a withdrawn pack has no usable list
 */
export function startCsv(client: Slipmark, registration: string, pack: Pack | undefined): void {
  const equipment = byId('equipment-csv', HTMLButtonElement);
  const ledger = byId('ledger-csv', HTMLButtonElement);
  const standing = pack?.withdrawal ? undefined : pack;
  equipment.disabled = standing === undefined;
  ledger.disabled = false;
  if (standing) onClickOnce(equipment, () => equipmentCsv(client, standing));
  onClickOnce(ledger, () => ledgerCsv(client, registration));
}

async function equipmentCsv(client: Slipmark, { pack }: Pack): Promise<void> {
  const baseline = await ifThere(client.getBaseline({ pack }));
  const { units } = await recordOfPack(client, pack);
  const items = (baseline?.body.equipment ?? []) as unknown as Item[];
  fetchFile(csvFromItems('equipment', items, units), `${pack}-equipment.csv`, TYPE);
}

async function ledgerCsv(client: Slipmark, registration: string): Promise<void> {
  const entries: LedgerEntry[] = [];
  for await (const entry of everyItem(client.listLedger, { registration })) entries.push(entry);
  fetchFile(csvFromLedger(entries), `${registration}-ledger.csv`, TYPE);
}
