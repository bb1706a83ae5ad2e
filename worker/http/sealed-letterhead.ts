import type { VisitRecord } from '../visit/record.ts';
import type { Call } from './route.ts';
import { type OwnedPack, sealedJson } from './sealed-file.ts';

/** Who stands in the record that a pack was sealed from: its people, and the workshop as it signs. */
type Letterhead = Partial<Pick<VisitRecord, 'people' | 'workshop'>>;

const letterheadOf = (call: Call, owned: OwnedPack): Promise<Letterhead> =>
  sealedJson<Letterhead>(call, owned, owned.pack.recordSha256);

/** How the workshop of a pack is reached, as its record has it: its name, and what else it gives. */
export async function reachedAt(call: Call, owned: OwnedPack): Promise<{ name: string | undefined; at: string[] }> {
  const { workshop } = await letterheadOf(call, owned);
  const { name, contact, address } = workshop ?? {};
  return { name, at: [contact, address].filter((line) => line !== undefined) };
}

/** The name of a person whom the record of a pack knows by an identifier; undefined where it knows none. */
export async function nameInRecord(call: Call, owned: OwnedPack, id: string): Promise<string | undefined> {
  const { people } = await letterheadOf(call, owned);
  return people?.find((person) => person.id === id)?.name;
}
