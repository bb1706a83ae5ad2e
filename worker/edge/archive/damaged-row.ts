/** A row of a table that is not what was kept, and what can be done about it. */
export interface RowDamage {
  /** Which row. */
  what: string;
  /** In a sentence, without the stop. */
  remedy: string;
}

/** Between objects only the message of an error is passed on. */
const MESSAGE = /DAMAGED_ROW (\{.*\})/;

/** Ends the answer of an object that would have to be given from a damaged row. */
export class DamagedRow extends Error {
  constructor(damage: RowDamage) {
    super(`DAMAGED_ROW ${JSON.stringify(damage)}`);
  }
}

/** The damage that an error is about; undefined where it is about anything else. */
export function damageIn(message: string): RowDamage | undefined {
  const text = MESSAGE.exec(message)?.[1];
  return text === undefined ? undefined : (JSON.parse(text) as RowDamage);
}

/**
 * What a column holds as JSON.
 *
 * @throws DamagedRow where it is none, or not of its form
 */
export function columnJson<T>(text: string, isOfForm: (value: unknown) => boolean, damage: RowDamage): T {
  try {
    const value: unknown = JSON.parse(text);
    if (isOfForm(value)) return value as T;
  } catch {
    // Said below, as what is of another form is.
  }
  throw new DamagedRow(damage);
}
