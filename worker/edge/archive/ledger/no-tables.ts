/**
 * Stands for the tables of a ledger that never kept anything: whatever is asked, there is nothing. So a question about an aircraft that
 * nobody knows leaves nothing behind.
 */
export const NO_TABLES = { exec: () => ({ toArray: () => [] }) } as unknown as SqlStorage;
