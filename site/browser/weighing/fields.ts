import { type Quantity, type Units, unitOf } from '../../../worker/core/units/quantity.ts';
import { typedNumber } from '../typed-number.ts';
import type { Filled } from './record-of-form.ts';

type Field = HTMLInputElement | HTMLSelectElement;

const fieldsOf = (form: HTMLFormElement): Field[] => Array.from(form.querySelectorAll('[name]')) as unknown as Field[];

export const fieldNamed = (form: HTMLFormElement, pointer: string): Field | undefined =>
  fieldsOf(form).find(({ name }) => name === pointer || name.startsWith(`${pointer}/`));

/** Returns the name of a field with its part of the form: many fields have the label Name. */
export function nameOf(field: Field): string {
  const part = field.closest('fieldset')?.querySelector('legend')?.textContent;
  return `${part}: ${field.labels?.[0]?.textContent}`;
}

/** Returns the filled-in values as a record has them. An invalid number stays text, and the core reports it. */
export function filledIn(form: HTMLFormElement): Filled {
  const filled: Record<string, string | number | boolean> = {};
  for (const { name, value, dataset } of fieldsOf(form))
    if (value.trim() !== '') filled[name] = readValue(value.trim(), dataset.kind);
  return filled;
}

function readValue(text: string, kind: string | undefined): string | number | boolean {
  if (kind === 'boolean') return text === 'true';
  if (kind === 'moment') return withOffset(text);
  if (kind !== 'number') return text;
  return typedNumber(text, '.') ?? text;
}

/** Returns a local time of this browser with its offset, as a record has it. */
function withOffset(local: string): string {
  const minutes = -new Date(local).getTimezoneOffset();
  const two = (value: number): string => String(Math.floor(Math.abs(value))).padStart(2, '0');
  return `${local.slice(0, 16)}:00${minutes < 0 ? '-' : '+'}${two(minutes / 60)}:${two(minutes % 60)}`;
}

/** Fills the fields from a record or from a draft. */
export function fillFrom(form: HTMLFormElement, values: object): void {
  const isFilled = Object.keys(values).some((key) => key.startsWith('/'));
  for (const field of fieldsOf(form)) {
    const value = isFilled ? (values as Filled)[field.name] : valueAt(values, field.name);
    // A required choice can be cleared; the others keep their value.
    if (value === undefined && field instanceof HTMLSelectElement && field.options[0]?.value !== '') continue;
    const text = value === undefined ? '' : String(value);
    field.value = field.dataset.kind === 'moment' ? text.slice(0, 16) : text;
  }
}

function valueAt(record: unknown, pointer: string): unknown {
  return pointer
    .split('/')
    .slice(1)
    .reduce<unknown>((at, step) => (at as Record<string, unknown> | undefined)?.[step], record);
}

/** Shows the chosen unit after every measurement. */
export function showUnits(form: HTMLFormElement, filled: Filled): void {
  const units = { mass: filled['/units/mass'], arm: filled['/units/arm'], volume: filled['/units/volume'] } as Units;
  for (const place of form.querySelectorAll<HTMLElement>('[data-unit]'))
    place.textContent = unitOf(place.dataset.unit as Quantity, units);
}
