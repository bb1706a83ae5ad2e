import type { VisitRecord } from '../../core/record/record.ts';
import type { OwnedPack } from './owned-pack.ts';
import type { Call } from './route.ts';
import { sealedJson } from './sealed-file.ts';

/** Who stands in the record that a pack was sealed from: its people, and the workshop as it signs. */
export type Letterhead = Partial<Pick<VisitRecord, 'people' | 'workshop'>>;

/** The same of a record that nobody has read yet. */
export const letterheadOf = (call: Call, owned: OwnedPack): Promise<Letterhead> =>
  sealedJson<Letterhead>(call, owned, owned.pack.recordSha256);

/** How the workshop is reached: its name, and what else it gives. */
export function reachedAt({ workshop }: Letterhead): { name: string | undefined; at: string[] } {
  const { name, contact, address } = workshop ?? {};
  return { name, at: [contact, address].filter((line) => line !== undefined) };
}

/** The name of a person by an identifier; undefined where it is nobody's. */
export const nameOf = ({ people }: Letterhead, id: string): string | undefined =>
  people?.find((person) => person.id === id)?.name;
