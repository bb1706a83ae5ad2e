/** Moments in a field of type `datetime-local`, which knows no offset: they are shown and read in the time of this browser. */
export function setMoment(field: HTMLInputElement, iso: string): void {
  const moment = new Date(iso);
  const local = new Date(moment.getTime() - moment.getTimezoneOffset() * 60_000);
  field.value = local.toISOString().slice(0, 16);
}

/** What the field says, or the present where it says nothing. */
export function timestampOf(field: HTMLInputElement): string {
  const moment = new Date(field.value);
  return (Number.isNaN(moment.getTime()) ? new Date() : moment).toISOString();
}
