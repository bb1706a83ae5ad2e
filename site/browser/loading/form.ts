import type { Formatter } from '../../../worker/core/text/formatter.ts';
import * as m from '../../../worker/core/text/generated/messages.ts';
import { element } from '../element.ts';
import { type Asked, entryOf, hintOf, mustBeTyped, type Typed } from './fields.ts';

/** Returns a text field: browsers drop a comma that they do not expect from number fields, and 8,5 becomes 85. */
export function fieldElement(asked: Asked, fmt: Formatter): HTMLElement {
  const { id, name, unit } = asked;
  const hint = element('small', {}, hintOf(asked, fmt));
  // A grey 0 would look typed in a field that must be typed.
  const placeholder = mustBeTyped(asked) ? '' : '0';
  const input = element('input', { name: id, inputMode: 'decimal', autocomplete: 'off', placeholder });
  return element('label', {}, `${name}, ${unit} `, hint, input);
}

/** Reads the form. */
export function readForm(form: HTMLFormElement, asked: readonly Asked[]): Typed {
  return Object.fromEntries(asked.map((field) => [field.id, entryOf(inputOf(form, field).value, field)]));
}

/**
 * Marks fields with impossible content, fields over their limit, and those that the result is about: by a word in bold,
 * and by the state of the field for screen readers.
 */
export function markForm(
  form: HTMLFormElement,
  asked: readonly Asked[],
  { typed, station }: { typed: Typed; station: string | undefined },
  fmt: Formatter,
): void {
  for (const field of asked) {
    const input = inputOf(form, field);
    const entry = typed[field.id] ?? { state: 'empty' };
    const isWrong = entry.state === 'read' ? entry.isBeyond : entry.state !== 'empty';
    const isMarked = isWrong || field.id === station;
    input.setAttribute('aria-invalid', String(isMarked));
    const hint = hintOf(field, fmt);
    const words = isMarked ? element('strong', {}, fmt.text(m.form_check, { hint })) : hint;
    input.parentElement?.querySelector('small')?.replaceChildren(words);
  }
}

function inputOf(form: HTMLFormElement, { id }: Asked): HTMLInputElement {
  return form.elements.namedItem(id) as HTMLInputElement;
}
