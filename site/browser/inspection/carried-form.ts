import type { VisitRecord } from '../../../worker/client/client.ts';
import { LIMITS } from '../../../worker/core/limits.ts';
import { element } from '../element.ts';
import { draftOf, keepDraft } from './answer-drafts.ts';
import { localTime, offsetOf, type TypedAnswer } from './carried-answer.ts';
import { personChoice } from './person-choice.ts';

/** Open item for which an answer is recorded. */
interface Asked {
  /** Storage key of the draft. */
  draft: string;
  record: VisitRecord;
  /** Initial fields of the form. */
  given: TypedAnswer;
  /** Whether the record already has an answer. */
  isOnRecord: boolean;
  /** Settles once the answer is in the record, or is known not to be. */
  put(answer: TypedAnswer): Promise<unknown>;
}

const ANSWERS = [
  ['', 'choose an answer'],
  ['closed', 'closed: done, or no longer there'],
  ['repeated', 'repeated: stays open unchanged'],
  ['extended', 'extended: stays open with the later limit of an entry of this record'],
  ['superseded', 'superseded: an entry of this record takes its place'],
] as const;

/**
 * Returns the form in which a person records what was done about an item that an earlier pack left open. It becomes
 * part of the record.
 */
export function carriedForm({ draft, record, given, isOnRecord, put }: Asked): HTMLDetailsElement {
  const kept = draftOf<TypedAnswer>(draft);
  const start = kept ?? given;
  const item = textField(start.item, { readOnly: !isOnRecord, required: true, maxLength: 100 });
  const answer = element(
    'select',
    { required: true },
    ...ANSWERS.map(([value, text]) => element('option', { value }, text)),
  );
  const by = personChoice(record.people, start.by);
  const at = momentField(record, start.at);
  const reason = textField(start.reason, { maxLength: LIMITS.lineLength });
  const evidence = textField(start.evidence, { maxLength: LIMITS.lineLength });
  const button = element('button', { type: 'submit' }, 'Put it on record');
  answer.value = start.answer;
  const typed = (): TypedAnswer => ({
    item: item.value,
    answer: answer.value,
    by: by.value,
    at: at.value,
    reason: reason.value,
    evidence: evidence.value,
  });
  const require = (): void => {
    for (const field of [reason, evidence]) field.required = answer.value !== 'repeated';
  };
  require();
  const form = element(
    'form',
    { className: 'fill' },
    labelled('Open item', item),
    labelled('Answer', answer),
    labelled('Decided by', by),
    labelled(`Decided at, local time ${offsetOf(record)}`, at, 'Between arrival and end of work'),
    labelled('Reason', reason, 'For all but repeated'),
    labelled(
      'Evidence',
      evidence,
      'Closed: reference to the document. Else: the entry of this record, by its identifier',
    ),
    element('p', {}, button),
  );
  form.addEventListener('input', () => {
    require();
    keepDraft(draft, typed());
  });
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    button.disabled = true;
    void put(typed()).finally(() => {
      button.disabled = false;
    });
  });
  const summary = element('summary', {}, `${isOnRecord ? 'Change the answer to' : 'Answer'} ${given.item}`);
  return element('details', { open: kept !== undefined }, summary, form);
}

const textField = (value: string, properties: Partial<HTMLInputElement>): HTMLInputElement =>
  element('input', { autocomplete: 'off', value, ...properties });

function momentField(record: VisitRecord, value: string): HTMLInputElement {
  const { arrivedAt, workEndedAt } = record.visit;
  return element('input', {
    type: 'datetime-local',
    required: true,
    min: localTime(record, arrivedAt),
    ...(workEndedAt !== undefined && { max: localTime(record, workEndedAt) }),
    value,
  });
}

function labelled(name: string, field: Node, hint?: string): HTMLElement {
  const hints = hint === undefined ? [] : [element('small', {}, hint)];
  return element('label', { className: 'field' }, name, field, ...hints);
}
