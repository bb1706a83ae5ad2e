import type { Scope } from '../record/scopes.ts';
import type { Person, Visit } from '../record/visit.ts';

/** What nobody may do under supervision. Common practice, no source. */
const NEVER_SUPERVISED: readonly Scope[] = ['independent-inspection', 'release'];

/**
 * Returns the person whose authorisation covers a kind of work: the person who did it, or the supervisor of one under
 * training.
 *
 * @returns undefined if neither covers it
 */
export function holderOf({ people }: Pick<Visit, 'people'>, person: Person, scope: Scope): Person | undefined {
  if (person.scope.includes(scope)) return person;
  if (NEVER_SUPERVISED.includes(scope)) return undefined;
  const supervisor = people.find(({ id }) => id === person.supervisor);
  return supervisor?.scope.includes(scope) ? supervisor : undefined;
}
