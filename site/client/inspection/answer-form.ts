import type { VisitRecord } from '../../../worker/client/client.ts';
import { element } from '../element.ts';
import type { Point } from './read-visit.ts';

/** A person's reason for which a caution may stand. */
export interface Acceptance {
  code: string;
  by: string;
  reason: string;
}

/** The form in which a named person answers for a caution: it becomes part of the record. */
export function answerForm(
  { code }: Point,
  { people }: VisitRecord,
  accept: (acceptance: Acceptance) => void,
): HTMLElement {
  const options = people.map(({ id, name }) => element('option', { value: id }, name));
  const by = element('select', { required: true }, ...options);
  const reason = element('input', { required: true, maxLength: 200, autocomplete: 'off' });
  const form = element(
    'form',
    { className: 'fill' },
    element('label', { className: 'field' }, 'Answered for by', by),
    element('label', { className: 'field' }, 'Why it may stand', reason),
    element('p', {}, element('button', { type: 'submit' }, 'Put it on record')),
  );
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    accept({ code, by: by.value, reason: reason.value.trim() });
  });
  return element('details', {}, element('summary', {}, 'Answer for it'), form);
}
