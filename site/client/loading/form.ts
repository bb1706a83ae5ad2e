import type { Printer } from '../../../worker/units/print.ts';
import { element } from '../element.ts';
import { type Asked, entryOf, hintOf, type Typed } from './fields.ts';

/** A text field: fields for numbers drop a comma that their browser does not expect, and 8,5 becomes 85. */
export function fieldElement(asked: Asked, say: Printer): HTMLElement {
  const { id, name, unit } = asked;
  const hint = element('small', {}, hintOf(asked, say));
  const input = element('input', { name: id, inputMode: 'decimal', autocomplete: 'off', placeholder: '0' });
  return element('label', {}, `${name}, ${unit} `, hint, input);
}

/** Reads the form, and marks what cannot be, and what is over its limit. */
export function readForm(form: HTMLFormElement, asked: readonly Asked[]): Typed {
  const entries = asked.map((field) => {
    const input = form.elements.namedItem(field.id) as HTMLInputElement;
    const entry = entryOf(input.value, field);
    const isWrong = entry.state === 'read' ? entry.isBeyond : entry.state !== 'empty';
    input.setAttribute('aria-invalid', String(isWrong));
    return [field.id, entry] as const;
  });
  return Object.fromEntries(entries);
}

/** Marks one field more: its station is what the answer speaks of. */
export function markField(form: HTMLFormElement, station: string): void {
  const input = form.elements.namedItem(station);
  if (input instanceof HTMLInputElement) input.setAttribute('aria-invalid', 'true');
}
