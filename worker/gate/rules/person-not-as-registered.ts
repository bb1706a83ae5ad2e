import { phrase } from '../../words/words.ts';
import { type Hit, PRACTICE, type RegisteredPerson, type Rule } from '../rule.ts';

export const personNotAsRegistered: Rule = {
  code: 'PERSON_NOT_AS_REGISTERED',
  severity: 'blocks',
  meaning:
    'A person of the record has another name, capacity, licence or scope, or a longer validity, than the table of people of the workshop says',
  remedy: phrase`Correct the record, or have an administrator correct the table of people`,
  source: PRACTICE,
  check: ({ visit, facts, say }) =>
    visit.people.flatMap((person, index): Hit[] => {
      const registered = facts.people?.find(({ id }) => id === person.id);
      if (!registered) return [];
      const data = { person: person.id };
      return differences(person, registered).map((field) => ({
        path: ['people', index, field],
        sentence: say.words`${person.name}: the ${say.term(FIELDS[field])} is not as in the table of people of the workshop`,
        data: { ...data, field },
      }));
    }),
};

const FIELDS = {
  name: phrase`name`,
  capacity: phrase`capacity`,
  authorisation: phrase`licence or authorisation`,
  scope: phrase`scope`,
  validUntil: phrase`validity`,
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
