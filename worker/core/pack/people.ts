import type { Person, Visit } from '../record/visit.ts';
import { DASH } from '../text/dash.ts';
import * as m from '../text/generated/messages.ts';
import type { PackContext } from './context.ts';

/** Returns the person with an identifier. */
export function personOf(visit: Visit, id: string | undefined): Person | undefined {
  return visit.people.find((person) => person.id === id);
}

/** Returns a name as printed; a dash if nobody is named. */
export function nameOf(visit: Visit, id: string | undefined): string {
  return personOf(visit, id)?.name ?? id ?? DASH;
}

/** A signature field: name, capacity and number. */
export interface SignatureView {
  [name: string]: string;
  heading: string;
  name: string;
  capacity: string;
  authorisation: string;
  date: string;
}

/** Returns the signature field of a person; one under training is printed with the supervisor. */
export function signatureOf(
  { visit, fmt }: Pick<PackContext, 'visit' | 'fmt'>,
  id: string | undefined,
  heading: string,
  date: string,
): SignatureView {
  const person = personOf(visit, id);
  const capacity = person?.capacity ?? DASH;
  return {
    heading,
    name: person?.name ?? DASH,
    capacity: person?.supervisor
      ? fmt.text(m.people_supervised, { capacity, supervisor: nameOf(visit, person.supervisor) })
      : capacity,
    authorisation: person?.authorisation ?? DASH,
    date,
  };
}
