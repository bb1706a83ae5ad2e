import { LIMITS } from '../../limits.ts';
import type { EnteredPerson, EnterPersonOutcome } from './workshop-calls.ts';

type Row = Omit<EnteredPerson, 'scope' | 'from' | 'until'> & {
  scope: string;
  validFrom: string | null;
  validUntil: string | null;
};

/** Everybody in the table of people, by identifier. */
export function peopleIn(sql: SqlStorage): EnteredPerson[] {
  const rows = sql.exec('SELECT * FROM people ORDER BY id').toArray() as unknown as Row[];
  return rows.map(({ scope, validFrom, validUntil, ...person }) => {
    return { ...person, scope: JSON.parse(scope), from: validFrom, until: validUntil };
  });
}

export function enterPerson(sql: SqlStorage, person: EnteredPerson): EnterPersonOutcome {
  const known = peopleIn(sql);
  const isNew = !known.some(({ id }) => id === person.id);
  if (isNew && known.length >= LIMITS.workshopPeople) return { kind: 'full' };
  const { id, name, capacity, licence, scope, from, until, enteredAt, enteredBy } = person;
  sql.exec(
    `INSERT OR REPLACE INTO people (id, name, capacity, licence, scope, validFrom, validUntil, enteredAt, enteredBy)
     VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)`,
    id,
    name,
    capacity,
    licence,
    JSON.stringify(scope),
    from,
    until,
    enteredAt,
    enteredBy,
  );
  return { kind: 'entered', person, isNew };
}
