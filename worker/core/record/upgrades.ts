/** Step from one version of the record to the next. Forward only, and never removed: old packs stay readable. */
interface Upgrade {
  from: number;
  apply(record: Record<string, unknown>): Record<string, unknown>;
}

/** Version 1 is the first; the next change of format adds its step here, with a fixture of the old form. */
const UPGRADES: readonly Upgrade[] = [];

/** Upgrades a record to the current version; anything that is not an object, or has no known version, is returned unchanged. */
export function upgrade(input: unknown): unknown {
  return UPGRADES.reduce((record, step) => {
    const isFrom =
      typeof record === 'object' && record !== null && 'schemaVersion' in record && record.schemaVersion === step.from;
    return isFrom ? step.apply(record as Record<string, unknown>) : record;
  }, input);
}
