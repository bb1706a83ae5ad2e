/**
 * Substitute for the tables of an empty ledger: every query returns nothing. A question about an unknown aircraft
 * therefore leaves nothing behind.
 */
export const NO_TABLES = { exec: () => ({ toArray: () => [] }) } as unknown as SqlStorage;
