/**
 * Text that spreadsheets take for a formula, of any origin (OWASP, “CSV injection”; from memory). An apostrophe in
 * front makes it text. Text that already has apostrophes in front gets one more, so that every text can be restored.
 */
const TAKEN_FOR_FORMULA = /^'*[=+\-@\t\r]/;

export const defused = (text: string): string => (TAKEN_FOR_FORMULA.test(text) ? `'${text}` : text);

export const restored = (cell: string): string =>
  cell.startsWith("'") && TAKEN_FOR_FORMULA.test(cell) ? cell.slice(1) : cell;
