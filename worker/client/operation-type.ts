import { comment, type NamedTypes, type Schema, typeOf } from './schema-type.ts';

type Content = Readonly<Record<string, { schema: Schema }>>;

interface Parameter {
  name: string;
  in: 'path' | 'query' | 'header';
  description: string;
}

interface Response {
  $ref?: string;
  content?: Content;
}

/** Operation of the description, with its path and method. */
export interface Described {
  operationId: string;
  summary: string;
  description?: string;
  method: string;
  path: string;
  parameters: readonly Parameter[];
  requestBody?: { content: Content };
  responses: Readonly<Record<string, Response>>;
  'x-repeatable'?: boolean;
}

/** Returns the type of an operation, with everything in its description. */
export function operationType(described: Described, named: NamedTypes): string {
  const { operationId, summary, description, method, path, parameters, requestBody, responses } = described;
  const within = (place: Parameter['in']) => parameters.filter((parameter) => parameter.in === place);
  const lines = [`method: '${method}';`, `path: '${path}';`];
  const inPath = within('path');
  if (inPath.length > 0) lines.push(`params: { ${fields(inPath, '')} };`);
  if (within('query').length > 0) lines.push(`query: { ${fields(within('query'), '?')} };`);
  if (within('header').length > 0) lines.push(`headers: { ${fields(within('header'), '?')} };`);
  if (requestBody) lines.push(`body: ${contentType(requestBody.content, named)};`);
  const answers = Object.entries(responses).map(([status, response]) => `${status}: ${answerType(response, named)};`);
  lines.push(`answers: {\n${answers.join('\n')}\n};`);
  return `${comment({ title: summary, description })}${operationId}: {\n${lines.join('\n')}\n};`;
}

const fields = (parameters: readonly Parameter[], optional: '' | '?'): string =>
  parameters
    .map(({ name, description }) => `${comment({ description })}${JSON.stringify(name)}${optional}: string;`)
    .join('\n');

function answerType({ $ref, content }: Response, named: NamedTypes): string {
  if ($ref !== undefined) return "{ 'application/problem+json': Problem }";
  return content ? contentType(content, named) : 'undefined';
}

/** Returns the type of a body, by media type. A merge patch (RFC 7396) may omit anything, and removes by null. */
function contentType(content: Content, named: NamedTypes): string {
  const types = Object.entries(content).map(([type, { schema }]) => {
    const shape = typeOf(schema, named);
    return `${JSON.stringify(type)}: ${type === 'application/merge-patch+json' ? `MergePatch<${shape}>` : shape};`;
  });
  return `{ ${types.join('\n')} }`;
}

/** Returns what the client must know of an operation to call it. */
export function callOf(described: Described): string {
  const { operationId, method, path, parameters, requestBody, responses } = described;
  const headers = parameters.filter((parameter) => parameter.in === 'header').map(({ name }) => name);
  const [type] = Object.keys(requestBody?.content ?? {});
  const isGood = ([status]: [string, Response]): boolean => status.startsWith('2');
  const given = Object.entries(responses)
    .filter(isGood)
    .flatMap(([, { content = {} }]) => Object.values(content).map(({ schema }) => schema.format === 'binary'));
  const call = {
    method,
    path,
    ...(headers.length > 0 && { headers }),
    ...(type !== undefined && { type }),
    ...(described['x-repeatable'] && { isRepeatable: true }),
    ...(given.length > 0 && given.every(Boolean) && { isFile: true }),
  };
  return `${operationId}: ${JSON.stringify(call)},`;
}
