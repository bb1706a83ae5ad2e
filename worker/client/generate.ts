// Node script: node worker/client/generate.ts
// Writes the types of every call, and the data that the client needs to make it, from the API description.
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { openapi } from '../edge/http/openapi.ts';
import { ROUTES } from '../edge/http/routes.ts';
import { callOf, type Described, operationType } from './operation-type.ts';
import { comment, namedTypes, objectType, type Schema } from './schema-type.ts';

// Why our own generator: openapi-typescript needs the compiler API of TypeScript 5, which TypeScript 7 does not
// have, and json-schema-to-typescript has no calls. zod writes a small part of JSON Schema, so one walk suffices. At
// run time a table describes each call and one function makes them all, 8 kB for a page. Change to
// openapi-typescript once it runs on TypeScript 7.

const FOLDER = join(import.meta.dirname, 'generated');

interface Description {
  paths: Record<string, Record<string, Omit<Described, 'method' | 'path'>> & { parameters: Described['parameters'] }>;
  components: { schemas: Record<string, Schema> };
}

/** Returns the module with the types of `client.ts`. */
function apiModule({ paths, components }: Description): string {
  const operations = Object.entries(paths).flatMap(([path, { parameters: inPath, ...methods }]) =>
    Object.entries(methods).map(([method, { parameters = [], ...operation }]) => {
      return { ...operation, method: method.toUpperCase(), path, parameters: [...inPath, ...parameters] };
    }),
  );
  const named = namedTypes([components.schemas, paths]);
  const types = [...named].map(
    ([name, schema]) => `${comment(schema)}export interface ${name} ${objectType(schema, named)}`,
  );
  return [
    '// Written by worker/client/generate.ts out of the interface description.',
    "import type { MergePatch } from '../merge-patch.ts';",
    ...types,
    '/** Every call: where it goes, what it takes, what it answers by status and media type. */',
    `export interface Operations {\n${operations.map((operation) => operationType(operation, named)).join('\n')}\n}`,
    `export const CALLS = {\n${operations.map(callOf).join('\n')}\n} as const;`,
    '',
  ].join('\n\n');
}

mkdirSync(FOLDER, { recursive: true });
writeFileSync(join(FOLDER, 'api.ts'), apiModule(openapi(ROUTES) as unknown as Description));
