import type * as z from 'zod';
import { jsonSchemaOf, visitJsonSchema } from '../../core/record/json-schema.ts';
import { Problem } from './problem.ts';
import { PROBLEM_KINDS, type ProblemKind } from './problem-kinds.ts';
import type { Access, Operation, Route } from './route.ts';

type Json = Record<string, unknown>;
type Content = NonNullable<Operation['answers'][number]['content']>[string];

/** Descriptions of the path parameters. */
const PARAMETERS: Readonly<Record<string, string>> = {
  registration: 'Registration of the aircraft, as Q-SLM',
  person: 'Identifier of the person, as jonas',
  visit: 'Name that the shop gives to the visit: letters, digits, dot, hyphen, underscore, max. 40 characters',
  document: 'Identifier of a document of the pack, as owner-summary',
  sha256: 'SHA-256 in 64 lower-case hexadecimal digits',
  workshop: 'Identifier of a workshop',
  pack: 'Registration, pack number and issue, as Q-SLM-P3-1',
  link: 'Name of a link',
  key: 'Name of a key',
  token: 'The secret part of a link',
};

/** Returns the API description (OpenAPI 3.1), built from the routes and the schemas that the handlers use. */
export function openapi(routes: readonly Route[]): Json {
  const paths: Record<string, Json> = {};
  for (const [method, path, access, operation] of routes) {
    const item = paths[path] ?? { parameters: pathParameters(path) };
    paths[path] = { ...item, [method.toLowerCase()]: operationOf(access, operation) };
  }
  return {
    openapi: '3.1.0',
    info: {
      title: 'Slipmark',
      version: '1',
      description:
        'Turns the record of a light-aircraft workshop visit into a computed, checked and sealed release pack. Results depend on the record; they replace neither the manufacturer’s data nor local rules nor the judgement of the person who releases.',
    },
    servers: [{ url: '/' }],
    paths,
    components: {
      schemas: { VisitRecord: recordSchema(), Problem: jsonSchema(Problem) },
      responses: Object.fromEntries(Object.entries(PROBLEM_KINDS).map(([kind, { title }]) => [kind, problem(title)])),
      securitySchemes: {
        key: { type: 'http', scheme: 'bearer', description: 'Key of a workshop' },
        deployment: { type: 'http', scheme: 'bearer', description: 'Secret of the deployment' },
      },
    },
  };
}

function operationOf(access: Access, operation: Operation): Json {
  const { id, summary, description, isRepeatable, body, query = {}, headers = {} } = operation;
  const parameters = [...parametersIn('query', query), ...parametersIn('header', headers)];
  const scope = access === 'public' || access === 'deployment' ? '' : `Needs the scope \`${access}\`.`;
  return {
    operationId: id,
    summary,
    description: [description, scope].filter(Boolean).join(' '),
    // An extension of this project: calls that a client may repeat if it lost the response.
    ...(isRepeatable && { 'x-repeatable': true }),
    ...(parameters.length > 0 && { parameters }),
    ...(body && {
      requestBody: {
        required: true,
        description: body.description,
        content: { [body.type]: { schema: schemaOf(body.schema) } },
      },
    }),
    responses: responsesOf(access, operation),
    security: access === 'public' ? [] : [{ [access === 'deployment' ? 'deployment' : 'key']: [] }],
  };
}

function responsesOf(access: Access, { answers, problems = [] }: Operation): Json {
  const always: ProblemKind[] = ['malformed-request', 'not-found', 'internal', 'damaged', 'unavailable'];
  const guarded: ProblemKind[] = access === 'public' ? [] : ['unauthorized', 'forbidden', 'too-many-requests'];
  const byStatus = Map.groupBy([...always, ...guarded, ...problems], (kind) => PROBLEM_KINDS[kind].status);
  const responses: Record<string, Json> = {};
  for (const [status, kinds] of byStatus) responses[status] = problemsOf([...new Set(kinds)]);
  for (const [status, { description, content, headers = [] }] of Object.entries(answers)) {
    const described = headers.map((name) => [name, { schema: { type: 'string' } }]);
    responses[status] = {
      description,
      ...(headers.length > 0 && { headers: Object.fromEntries(described) }),
      ...(content && { content: contentOf(content) }),
    };
  }
  return responses;
}

function problemsOf(kinds: readonly ProblemKind[]): Json {
  const [only, ...others] = kinds;
  if (only && others.length === 0) return { $ref: `#/components/responses/${only}` };
  return problem(kinds.map((kind) => PROBLEM_KINDS[kind].title).join('; '));
}

const problem = (description: string): Json => ({
  description,
  content: { 'application/problem+json': { schema: { $ref: '#/components/schemas/Problem' } } },
});

const contentOf = (content: Readonly<Record<string, Content>>): Json =>
  Object.fromEntries(Object.entries(content).map(([type, schema]) => [type, { schema: schemaOf(schema) }]));

function schemaOf(schema: Content): Json {
  if (schema === 'VisitRecord') return { $ref: '#/components/schemas/VisitRecord' };
  if (schema === 'binary') return { type: 'string', format: 'binary' };
  return schema === 'text' ? { type: 'string' } : jsonSchema(schema);
}

function jsonSchema(schema: z.ZodType): Json {
  const { $schema: _, ...rest } = jsonSchemaOf(schema, 'input');
  return rest;
}

/** Returns the schema of the record, without its own address in this description. */
function recordSchema(): Json {
  const { $id: _id, $schema: _schema, ...rest } = visitJsonSchema();
  return rest;
}

const pathParameters = (path: string): Json[] =>
  [...path.matchAll(/\{(\w+)\}/g)].map(([, name = '']) => ({
    name,
    in: 'path',
    required: true,
    description: PARAMETERS[name] ?? name,
    schema: { type: 'string' },
  }));

const parametersIn = (place: 'query' | 'header', described: Readonly<Record<string, string>>): Json[] =>
  Object.entries(described).map(([name, description]) => ({
    name,
    in: place,
    description,
    schema: { type: 'string' },
  }));
