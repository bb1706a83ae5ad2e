import type { VisitRecord } from '../../core/record/record.ts';
import type { OwnedPack } from './owned-pack.ts';
import type { Call } from './route.ts';
import { sealedForm } from './sealed-record.ts';

/** People and workshop in the sealed record of a pack. */
export type Letterhead = Partial<Pick<VisitRecord, 'people' | 'workshop'>>;

/** Reads the letterhead of a pack whose record has not been read yet. */
export const letterheadOf = (call: Call, owned: OwnedPack): Promise<Letterhead> => sealedForm(call, owned);

/** Returns the contact details of the workshop: its name, and the rest in one line. */
export function reachedAt({ workshop }: Letterhead): { name: string | undefined; at: string[] } {
  const { name, contact, address } = workshop ?? {};
  return { name, at: [contact, address].filter((line) => line !== undefined) };
}

/** Returns the name of a person by an identifier; undefined if nobody has it. */
export const nameOf = ({ people }: Letterhead, id: string): string | undefined =>
  people?.find((person) => person.id === id)?.name;
