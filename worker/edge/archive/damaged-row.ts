/** Damaged row of a table, and its remedy. */
export interface RowDamage {
  /** Name of the row. */
  what: string;
  /** Remedy in a sentence, without the full stop. */
  remedy: string;
}

/** Only the message of an error is passed between objects. */
const MESSAGE = /DAMAGED_ROW (\{.*\})/;

/** Stops a call to an object that would return data from a damaged row. */
export class DamagedRow extends Error {
  constructor(damage: RowDamage) {
    super(`DAMAGED_ROW ${JSON.stringify(damage)}`);
  }
}

/** Returns the damage in an error message; undefined for any other error. */
export function damageIn(message: string): RowDamage | undefined {
  const text = MESSAGE.exec(message)?.[1];
  return text === undefined ? undefined : (JSON.parse(text) as RowDamage);
}

/**
 * Parses the JSON in a column.
 *
 * @throws DamagedRow if it is not JSON, or not of its form
 */
export function columnJson<T>(text: string, isOfForm: (value: unknown) => boolean, damage: RowDamage): T {
  try {
    const value: unknown = JSON.parse(text);
    if (isOfForm(value)) return value as T;
  } catch {
    // Reported below, like JSON of another form.
  }
  throw new DamagedRow(damage);
}
