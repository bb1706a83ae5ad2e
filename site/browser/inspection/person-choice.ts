import type { VisitRecord } from '../../../worker/client/client.ts';
import { element } from '../element.ts';

/** Returns a choice of the people of a record. Nobody is chosen in advance. */
export function personChoice(people: VisitRecord['people'], chosen: string | undefined): HTMLSelectElement {
  const nobody = element('option', { value: '' }, 'choose a person');
  const options = people.map(({ id, name }) => element('option', { value: id }, name));
  const choice = element('select', { required: true }, nobody, ...options);
  choice.value = people.some(({ id }) => id === chosen) ? (chosen ?? '') : '';
  return choice;
}
