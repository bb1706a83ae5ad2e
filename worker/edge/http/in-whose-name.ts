import type { RegisteredPerson } from '../../core/core.ts';
import { dateOf } from '../../core/units/calendar.ts';
import { ArchiveDamaged, orUnavailable } from './answer.ts';
import { packOf } from './params.ts';
import { HttpProblem } from './problem.ts';
import type { Call } from './route.ts';
import { letterheadOf, nameOf } from './sealed-letterhead.ts';

/** Returns the key and the person of a call, for entries of a ledger. */
export const actorOf = ({ caller }: Call) => ({ key: caller.key, person: caller.person });

/**
 * Returns the person who holds the caller's key; undefined for a key of a tool or an office.
 *
 * @throws HttpProblem 403 if the table does not have them, or not on this day
 */
async function personOfKey(call: Call): Promise<RegisteredPerson | undefined> {
  const { person: id, workshop } = call.caller;
  if (id === null) return undefined;
  const people = orUnavailable(await call.world.archive.workshop(workshop, (calls) => calls.people()));
  const person = people.find((known) => known.id === id);
  if (!person)
    throw new HttpProblem(
      'forbidden',
      `The key is in the hand of ${id}, who is not in the table of people of the workshop: an administrator enters them with PUT /v1/people/${id}`,
    );
  requireRightsToday(call, person);
  return person;
}

function requireRightsToday(call: Call, { id, from, until }: RegisteredPerson): void {
  const on = dateOf(call.world.now().toISOString());
  if ((from ?? on) > on || (until ?? on) < on)
    throw new HttpProblem(
      'forbidden',
      `The rights of ${id} do not hold on ${on} by the table of people of the workshop`,
    );
}

/**
 * Checks that the key of a person releases only in that person's name. The release check compares the record's data
 * about the person with the table.
 *
 * @param by person of the record
 * @throws HttpProblem 403
 */
export async function requireReleaser(call: Call, by: string): Promise<void> {
  const person = await personOfKey(call);
  if (person && person.id !== by) throw otherPerson(person.id, by);
}

/**
 * Returns the name under which a pack is withdrawn. In a workshop with a table of people only one of them may withdraw,
 * with the right to release, on this day.
 *
 * @param by a person of the table, by identifier or name; if the workshop has no table any name, or a person of the
 * record by identifier
 * @throws HttpProblem 403
 */
export async function withdrawerName(call: Call, by: string): Promise<string> {
  const ofKey = await personOfKey(call);
  const isMeant = ({ id, name }: RegisteredPerson): boolean => by === id || by === name;
  if (ofKey && !isMeant(ofKey)) throw otherPerson(ofKey.id, by);
  const people = orUnavailable(await call.world.archive.workshop(call.caller.workshop, (calls) => calls.people()));
  if (people.length === 0) return (await nameInPack(call, by)) ?? by;
  const person = ofKey ?? people.find(isMeant);
  if (!person) throw new HttpProblem('forbidden', `${by} is not in the table of people of the workshop`);
  requireRightsToday(call, person);
  if (!person.scope.includes('release'))
    throw new HttpProblem('forbidden', `${person.name} has no right to release, so none to withdraw`);
  return person.name;
}

/** Returns the name of a person in the record of the pack. A damaged record does not prevent a withdrawal. */
async function nameInPack(call: Call, id: string): Promise<string | undefined> {
  const { pack, ledger } = packOf(call);
  const kept = orUnavailable(await call.world.archive.ledger(ledger, (calls) => calls.pack(pack)));
  try {
    return kept ? nameOf(await letterheadOf(call, { name: ledger, pack: kept }), id) : undefined;
  } catch (error) {
    if (error instanceof ArchiveDamaged) return undefined;
    throw error;
  }
}

const otherPerson = (person: string, by: string) =>
  new HttpProblem('forbidden', `The key is in the hand of ${person}: it cannot act as ${by}`);
