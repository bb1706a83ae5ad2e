import * as m from '../../../text/generated/messages.ts';
import { said } from '../../../text/message.ts';
import { hitsIn } from '../../hits.ts';
import { PRACTICE, type RegisteredPerson, type Rule } from '../../rule.ts';

export const personNotAsRegistered: Rule = {
  code: 'PERSON_NOT_AS_REGISTERED',
  severity: 'blocks',
  meaning: 'A person’s name, capacity, licence, scope or validity differs from the people table of the workshop',
  remedy: m.personNotAsRegistered_remedy,
  source: PRACTICE,
  check: ({ visit, facts }) =>
    hitsIn(['people'], visit.people, (person) => {
      const registered = facts.people?.find(({ id }) => id === person.id);
      if (!registered) return undefined;
      const data = { person: person.id };
      return differences(person, registered).map((field) => ({
        field,
        sentence: said(m.personNotAsRegistered_notTablePeopleWorkshop, {
          person: person.name,
          fields: said(FIELDS[field]),
        }),
        data: { ...data, field },
      }));
    }),
};

const FIELDS = {
  name: m.personNotAsRegistered_name,
  capacity: m.personNotAsRegistered_capacity,
  authorisation: m.personNotAsRegistered_licenceAuthorisation,
  scope: m.personNotAsRegistered_scope,
  validUntil: m.personNotAsRegistered_validity,
} as const;

type Field = keyof typeof FIELDS;

interface StatedPerson {
  name: string;
  capacity: string;
  authorisation?: string | undefined;
  scope: readonly string[];
  validUntil?: string | undefined;
}

function differences(stated: StatedPerson, registered: RegisteredPerson): Field[] {
  const { name, capacity, licence, scope, until } = registered;
  const isLonger = until !== null && (stated.validUntil === undefined || stated.validUntil > until);
  const differs: Record<Field, boolean> = {
    name: plain(stated.name) !== plain(name),
    capacity: plain(stated.capacity) !== plain(capacity),
    authorisation: plain(stated.authorisation ?? '') !== plain(licence ?? ''),
    scope: !stated.scope.every((kind) => scope.includes(kind)),
    validUntil: isLonger,
  };
  return (Object.keys(differs) as Field[]).filter((field) => differs[field]);
}

const plain = (text: string): string => text.trim().replaceAll(/\s+/g, ' ').toLowerCase();
