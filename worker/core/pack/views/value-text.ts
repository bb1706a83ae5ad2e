import { DASH } from '../../text/dash.ts';

/** Longest value printed. */
const LONGEST = 80;

/** Text of a value of the record, shortened. */
export function valueText(value: unknown): string {
  if (value === undefined) return DASH;
  const text = typeof value === 'string' ? value : JSON.stringify(value);
  return text.length > LONGEST ? `${text.slice(0, LONGEST)}…` : text;
}
