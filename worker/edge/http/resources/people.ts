import * as z from 'zod';
import { LIMITS } from '../../../core/limits.ts';
import { IDENTIFIER } from '../../../core/patterns.ts';
import { SCOPES } from '../../../core/record/scopes.ts';
import { isDate } from '../../../core/units/calendar.ts';
import { json, orNotFound, orUnavailable } from '../answer.ts';
import { printableLine } from '../printable-line.ts';
import { HttpProblem } from '../problem.ts';
import { requestBody } from '../request-body.ts';
import type { Call, Operation } from '../route.ts';
import * as schemas from '../schemas.ts';

const day = (description: string) =>
  z
    .string()
    .refine(isDate, 'a date as YYYY-MM-DD')
    .nullable()
    .default(null)
    .meta({ description, format: 'date', examples: ['2027-06-30'] });

const PersonRequest = z
  .strictObject({
    name: printableLine(80).meta({ description: 'Name as signed', examples: ['Jonas Veldt'] }),
    capacity: printableLine(80).meta({ description: 'Capacity in which they act', examples: ['Inspector'] }),
    licence: printableLine(80)
      .nullable()
      .default(null)
      .meta({ description: 'Licence or authorisation number', examples: ['INSP-0417'] }),
    scope: z
      .array(z.enum(SCOPES))
      .max(SCOPES.length)
      .meta({ description: 'What they may sign for; release is the right to release an aircraft' }),
    from: day('First day on which that holds'),
    until: day('Last day on which that holds'),
  })
  .refine(({ from, until }) => from === null || until === null || from <= until, {
    path: ['until'],
    message: 'The last day must not be before the first',
  });

export const listPeople: Operation = {
  id: 'listPeople',
  summary: 'The table of people of the workshop',
  description: 'The people of the workshop, with what they may sign for. Records are compared with it.',
  answers: { 200: { description: 'People', content: { 'application/json': schemas.listOf(schemas.Person) } } },
  async handle(call) {
    const { workshop } = call.caller;
    return json({ items: orUnavailable(await call.world.archive.workshop(workshop, (calls) => calls.people())) });
  },
};

export const getPerson: Operation = {
  id: 'getPerson',
  summary: 'A person of the workshop',
  answers: { 200: { description: 'The person', content: { 'application/json': schemas.Person } } },
  async handle(call) {
    const id = personOf(call);
    const { workshop } = call.caller;
    const people = orUnavailable(await call.world.archive.workshop(workshop, (calls) => calls.people()));
    return json(
      orNotFound(
        people.find((person) => person.id === id),
        'such person in the table',
      ),
    );
  },
};

export const putPerson: Operation = {
  id: 'putPerson',
  summary: 'Enter a person in the table of the workshop, or change what they may do',
  description:
    'From the first entry on, only a person in the table with the right to release on that day may release, and a record whose people differ from the table is blocked. A person is never removed: set the last day on which their rights are valid.',
  body: { type: 'application/json', description: 'The person', schema: PersonRequest },
  answers: {
    200: { description: 'Changed', content: { 'application/json': schemas.Person } },
    201: { description: 'Entered', content: { 'application/json': schemas.Person } },
  },
  problems: ['conflict', 'malformed-json', 'body-too-large', 'unsupported-media-type', 'request-not-valid'],
  async handle(call) {
    const id = personOf(call);
    const stated = await requestBody(call.request, PersonRequest);
    const { workshop, key } = call.caller;
    const person = { id, ...stated, scope: [...new Set(stated.scope)], enteredAt: call.world.now().toISOString() };
    const entered = { ...person, enteredBy: key };
    const outcome = orUnavailable(await call.world.archive.workshop(workshop, (calls) => calls.enterPerson(entered)));
    if (outcome.kind === 'full')
      throw new HttpProblem('conflict', `A workshop may have up to ${LIMITS.workshopPeople} people in its table`);
    call.world.log({ code: 'PERSON_ENTERED', person: id, key });
    return json(outcome.person, outcome.isNew ? 201 : 200, outcome.isNew ? { Location: call.url.pathname } : {});
  },
};

function personOf({ params }: Call): string {
  const { person = '' } = params;
  if (IDENTIFIER.test(person)) return person;
  throw new HttpProblem(
    'malformed-request',
    'A person is named by letters, digits, dot, hyphen or underscore, max. 40',
  );
}
