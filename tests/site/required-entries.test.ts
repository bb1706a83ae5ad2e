import { describe, expect, test } from 'vitest';
import { documentTitle } from '../../site/authorities/document-title.ts';
import { REQUIRED_ENTRIES } from '../../site/authorities/required-entries.ts';
import type { SchemaNode } from '../../site/build/schema-node.ts';
import { visitJsonSchema } from '../../worker/core/record/json-schema.ts';

const SCHEMA: SchemaNode = visitJsonSchema();

/** Finds a field of the schema by its path, `[]` behind the name of a list. */
function fieldAt(path: string): SchemaNode | undefined {
  return path.split('.').reduce<SchemaNode | undefined>((node, step) => {
    const name = step.replace('[]', '');
    const field = node?.properties?.[name];
    return step.endsWith('[]') ? field?.items : field;
  }, SCHEMA);
}

describe.each(Object.entries(REQUIRED_ENTRIES))('the entries of %s', (_, entries) => {
  test.each(entries.map((entry) => [entry.rule, entry] as const))(
    '%s: its fields and documents exist',
    (_rule, entry) => {
      expect(entry.fields.filter((field) => fieldAt(field) === undefined)).toEqual([]);
      expect(entry.documents.filter((template) => documentTitle(template) === undefined)).toEqual([]);
    },
  );
});
