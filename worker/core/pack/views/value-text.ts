import { DASH } from '../../text/dash.ts';

/** Longest value printed. */
const LONGEST = 80;

/** A value of the record as it stands there, shortened. */
export function valueText(value: unknown): string {
  if (value === undefined) return DASH;
  const text = typeof value === 'string' ? value : JSON.stringify(value);
  return text.length > LONGEST ? `${text.slice(0, LONGEST)}…` : text;
}
