const asked = new URLSearchParams(location.search);

/**
 * Session storage key of the drafts: typed text survives a reload, and a reading of the record after another answer was
 * saved.
 */
const PLACE = `slipmark-answers ${asked.get('aircraft')}/${asked.get('visit')}`;

const read = (): Record<string, object> => JSON.parse(sessionStorage.getItem(PLACE) ?? '{}');

/** Returns the draft of a form: typed, but not in the record yet. */
export const draftOf = <Draft extends object>(form: string): Draft | undefined => read()[form] as Draft | undefined;

export function keepDraft(form: string, draft: object): void {
  sessionStorage.setItem(PLACE, JSON.stringify({ ...read(), [form]: draft }));
}

export function dropDraft(form: string): void {
  const { [form]: _dropped, ...others } = read();
  sessionStorage.setItem(PLACE, JSON.stringify(others));
}
