const asked = new URLSearchParams(location.search);

/** Kept for the time that the tab is open: what is typed outlives a reload, and another answer that goes on record first. */
const PLACE = `slipmark-answers ${asked.get('aircraft')}/${asked.get('visit')}`;

const read = (): Record<string, object> => JSON.parse(sessionStorage.getItem(PLACE) ?? '{}');

/** What was typed in a form, and is not on record yet. */
export const draftOf = <Draft extends object>(form: string): Draft | undefined => read()[form] as Draft | undefined;

export function keepDraft(form: string, draft: object): void {
  sessionStorage.setItem(PLACE, JSON.stringify({ ...read(), [form]: draft }));
}

export function dropDraft(form: string): void {
  const { [form]: _dropped, ...others } = read();
  sessionStorage.setItem(PLACE, JSON.stringify(others));
}
