import type { Place } from '../../../record/record-index.ts';
import type { Visit } from '../../../record/visit.ts';
import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { fieldName } from '../../field-name.ts';
import { hits } from '../../hits.ts';
import { PRACTICE, type Rule } from '../../rule.ts';

/** Parts of the record in which people test or check; a person who watches an engine run from outside needs no scope. */
const TESTS: ReadonlySet<string | number | undefined> = new Set([
  'controls',
  'surveillance',
  'measurements',
  'compass',
  'wiring',
  'engineRuns',
]);

export const witnessWithoutScope: Rule = {
  code: 'WITNESS_WITHOUT_SCOPE',
  severity: 'caution',
  meaning: 'A test or check was done by a person without any scope',
  remedy: m.witnessWithoutScope_remedy,
  source: PRACTICE,
  check: ({ visit, people }) =>
    hits(people, (place) => {
      const person = visit.people.find(({ id }) => id === place.value);
      if (!person || !isTest(place) || hasScope(visit, person)) return undefined;
      return {
        path: place.path,
        sentence: said(m.witnessWithoutScope_noScope, {
          person: person.name,
          doing: fieldName(place.means.doing, place),
        }),
        data: { person: person.id },
      };
    }),
};

const isTest = ({ path }: Place<'person'>): boolean => TESTS.has(path[0]) && path.at(-1) !== 'heldBy';

function hasScope({ people }: Pick<Visit, 'people'>, { scope, supervisor }: Visit['people'][number]): boolean {
  return scope.length > 0 || (people.find(({ id }) => id === supervisor)?.scope.length ?? 0) > 0;
}
