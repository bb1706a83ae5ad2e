import type { Person, Visit } from '../record/visit.ts';
import { DASH } from '../text/dash.ts';

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

export function signatureOf(visit: Visit, id: string | undefined, heading: string, date: string): SignatureView {
  const person = personOf(visit, id);
  return {
    heading,
    name: person?.name ?? DASH,
    capacity: person?.capacity ?? DASH,
    authorisation: person?.authorisation ?? DASH,
    date,
  };
}
