import type { VisitRecord } from '../../../worker/client/client.ts';
import { figuresOf } from '../../../worker/core/gate/accepted-figures.ts';
import { element } from '../element.ts';
import { draftOf, keepDraft } from './answer-drafts.ts';
import { personChoice } from './person-choice.ts';
import type { Point } from './read-visit.ts';

/** Acceptance of a caution: a person and the reason. */
export interface Acceptance {
  code: string;
  by: string;
  ground: Ground;
  reason: string;
  /** Figures of the cautions that were read: others need a new decision. */
  figures: number[];
}

type Ground = NonNullable<NonNullable<NonNullable<VisitRecord['release']>['acknowledgements']>[number]['ground']>;

const GROUNDS: readonly (readonly [Ground, string])[] = [
  ['cause-found', 'Cause found'],
  ['measured-again', 'Measured again'],
  ['allowed-by-type', 'Allowed by the type’s documents'],
  ['no-effect', 'No effect on flight'],
  ['done-later', 'Done later, with a limit'],
  ['not-possible', 'Not possible here'],
];

/**
 * Returns the form in which a named person accepts a caution; the acceptance becomes part of the record.
 *
 * @param cautions all cautions with this code: an acceptance is valid for all of them, with their figures
 * @param accept settles once the acceptance is in the record, or is known not to be
 */
export function answerForm(
  { code }: Point,
  cautions: readonly Pick<Point, 'code' | 'data'>[],
  { people }: VisitRecord,
  accept: (acceptance: Acceptance) => Promise<unknown>,
): HTMLElement {
  const draft = draftOf<Acceptance>(code);
  const by = personChoice(people, draft?.by);
  const figures = figuresOf(cautions, code);
  const choices = GROUNDS.map(([value, text]) => element('option', { value, selected: value === draft?.ground }, text));
  const ground = element('select', { required: true }, element('option', { value: '' }, 'Choose'), ...choices);
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
    element('label', { className: 'field' }, 'Ground', ground),
    element('label', { className: 'field' }, 'Reason for accepting it', reason),
    element('p', {}, button),
  );
  form.addEventListener('input', () =>
    keepDraft(code, { code, by: by.value, ground: ground.value, reason: reason.value }),
  );
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    button.disabled = true;
    void accept({
      ...{ code, by: by.value, ground: ground.value as Ground, reason: reason.value.trim() },
      figures,
    }).finally(() => {
      button.disabled = false;
    });
  });
  return element(
    'details',
    { open: draft !== undefined },
    element(
      'summary',
      {},
      cautions.length === 1 ? 'Accept caution' : `Accept all ${cautions.length} cautions of this kind`,
    ),
    form,
  );
}
