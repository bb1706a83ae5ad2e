const DAY_MS = 86_400_000;
const DATED = /^\d{4}-\d{2}-\d{2}(?=$|T)/;

const dayOf = (date: string): number => Date.parse(`${date.slice(0, 10)}T00:00:00Z`) / DAY_MS;
const dateOf = (day: number): string => new Date(day * DAY_MS).toISOString().slice(0, 10);

/**
 * A record with every date and moment moved by the same number of whole days, so that its work ended yesterday: the demo
 * visit is then never so old that its authorisations and deferrals have run out. Times of day stay.
 */
export function redated<Record extends { visit: { workEndedAt?: string | undefined; arrivedAt: string } }>(
  record: Record,
  now: Date,
): Record {
  const ended = record.visit.workEndedAt ?? record.visit.arrivedAt;
  const days = Math.floor(now.getTime() / DAY_MS) - 1 - dayOf(ended);
  const move = (text: string): string => text.replace(DATED, (date) => dateOf(dayOf(date) + days));
  return JSON.parse(JSON.stringify(record), (_key, value) => (typeof value === 'string' ? move(value) : value));
}
