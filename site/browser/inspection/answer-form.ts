import type { VisitRecord } from '../../../worker/client/client.ts';
import { element } from '../element.ts';
import { draftOf, keepDraft } from './answer-drafts.ts';
import { personChoice } from './person-choice.ts';
import type { Point } from './read-visit.ts';

/** Acceptance of a caution: a person and the reason. */
export interface Acceptance {
  code: string;
  by: string;
  reason: string;
}

/**
 * Returns the form in which a named person accepts a caution; the acceptance becomes part of the record.
 *
 * @param alike number of cautions with this code: an acceptance is valid for all of them
 * @param accept settles once the acceptance is in the record, or is known not to be
 */
export function answerForm(
  { code }: Point,
  alike: number,
  { people }: VisitRecord,
  accept: (acceptance: Acceptance) => Promise<unknown>,
): HTMLElement {
  const draft = draftOf<Acceptance>(code);
  const by = personChoice(people, draft?.by);
  const reason = element('input', {
    required: true,
    maxLength: 200,
    autocomplete: 'off',
    value: draft?.reason ?? '',
  });
  const button = element('button', { type: 'submit' }, 'Put it on record');
  const form = element(
    'form',
    { className: 'fill' },
    element('label', { className: 'field' }, 'Accepted by', by),
    element('label', { className: 'field' }, 'Reason for accepting it', reason),
    element('p', {}, button),
  );
  form.addEventListener('input', () => keepDraft(code, { code, by: by.value, reason: reason.value }));
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    button.disabled = true;
    void accept({ code, by: by.value, reason: reason.value.trim() }).finally(() => {
      button.disabled = false;
    });
  });
  return element(
    'details',
    { open: draft !== undefined },
    element('summary', {}, alike === 1 ? 'Accept caution' : `Accept all ${alike} cautions of this kind`),
    form,
  );
}
