/**
 * Shows a timestamp in a field of type `datetime-local`, which has no offset: shown and read in the time zone of this
 * browser.
 */
export function setMoment(field: HTMLInputElement, iso: string): void {
  const moment = new Date(iso);
  const local = new Date(moment.getTime() - moment.getTimezoneOffset() * 60_000);
  field.value = local.toISOString().slice(0, 16);
}

/** Returns the timestamp of a field; now if it is empty. */
export function timestampOf(field: HTMLInputElement): string {
  const moment = new Date(field.value);
  return (Number.isNaN(moment.getTime()) ? new Date() : moment).toISOString();
}
