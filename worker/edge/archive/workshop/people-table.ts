import { LIMITS } from '../../../core/limits.ts';
import { columnJson, DamagedRow } from '../damaged-row.ts';
import type { EnteredPerson, EnterPersonOutcome } from './workshop-calls.ts';

// Why a table of people: a record chooses its own identifiers, so without the table its author chooses who a key
// stands for. Rows are never removed, because packs name them. A workshop without a table works as before, but no
// personal key releases. The table is not part of the chain: it shows who may act today, the chain shows who did.

type Row = Omit<EnteredPerson, 'scope' | 'from' | 'until'> & {
  scope: string;
  validFrom: string | null;
  validUntil: string | null;
};

const DAY = /^\d{4}-\d{2}-\d{2}$/;

/**
 * Returns all people of the table, by identifier.
 *
 * @throws DamagedRow if the rights of anybody cannot be read: then the rights of everybody are uncertain
 */
export function peopleIn(sql: SqlStorage): EnteredPerson[] {
  const rows = sql.exec('SELECT * FROM people ORDER BY id').toArray() as unknown as Row[];
  return rows.map(({ scope, validFrom, validUntil, ...person }) => {
    const remedy = `Enter the person again: PUT /v1/people/${person.id}`;
    const damage = { what: `person ${person.id} in the table of people`, remedy };
    if ([validFrom, validUntil].some((day) => day !== null && !DAY.test(day))) throw new DamagedRow(damage);
    return { ...person, scope: columnJson(scope, isListOfTexts, damage), from: validFrom, until: validUntil };
  });
}

const isListOfTexts = (value: unknown): boolean =>
  Array.isArray(value) && value.every((entry) => typeof entry === 'string');

/** Enters a person, even over a row that cannot be read. */
export function enterPerson(sql: SqlStorage, person: EnteredPerson): EnterPersonOutcome {
  const known = sql.exec<{ id: string }>('SELECT id FROM people').toArray();
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
