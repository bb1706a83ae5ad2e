/**
 * Text that begins with one of these is taken for a formula by spreadsheets, whoever wrote it (OWASP, “CSV injection”; from memory). An
 * apostrophe in front makes it text. One more is put where apostrophes stand in front already, so that each text has its way back.
 */
const TAKEN_FOR_FORMULA = /^'*[=+\-@\t\r]/;

export const defused = (text: string): string => (TAKEN_FOR_FORMULA.test(text) ? `'${text}` : text);

export const restored = (cell: string): string =>
  cell.startsWith("'") && TAKEN_FOR_FORMULA.test(cell) ? cell.slice(1) : cell;
