import type { Acceptance } from './answer-form.ts';

const asked = new URLSearchParams(location.search);

/** Kept for the time that the tab is open: what is typed outlives a reload, and another answer that goes on record first. */
const PLACE = `slipmark-answers ${asked.get('aircraft')}/${asked.get('visit')}`;

const read = (): Record<string, Acceptance> => JSON.parse(sessionStorage.getItem(PLACE) ?? '{}');

/** What was typed for a caution, and is not on record yet. */
export const draftOf = (code: string): Acceptance | undefined => read()[code];

export function keepDraft(draft: Acceptance): void {
  sessionStorage.setItem(PLACE, JSON.stringify({ ...read(), [draft.code]: draft }));
}

export function dropDraft(code: string): void {
  const { [code]: _dropped, ...others } = read();
  sessionStorage.setItem(PLACE, JSON.stringify(others));
}
