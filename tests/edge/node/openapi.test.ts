import { Validator } from '@seriousme/openapi-schema-validator';
import { describe, expect, test } from 'vitest';
import { openapi } from '../../../worker/edge/http/openapi.ts';
import { PROBLEM_KINDS } from '../../../worker/edge/http/problem-kinds.ts';
import { ROUTES } from '../../../worker/edge/http/routes.ts';

interface Described {
  paths: Record<string, Record<string, { security: object[]; responses: object; description: string }>>;
  components: { schemas: Record<string, object>; responses: Record<string, object> };
}

const description = openapi(ROUTES) as unknown as Described;

describe('openapi()', () => {
  test('is valid under an independent validator', async () => {
    const validator = new Validator();
    const result = await validator.validate(structuredClone(description) as never);
    expect(result.errors ?? []).toEqual([]);
    expect(result.valid).toBe(true);
    expect(validator.version).toBe('3.1');
  });

  test('has every route of the table, with who may call it', () => {
    for (const [method, path, access] of ROUTES) {
      const operation = description.paths[path]?.[method.toLowerCase()];
      expect(operation, `${method} ${path}`).toBeDefined();
      expect(operation?.security.length).toBe(access === 'public' ? 0 : 1);
    }
    const count = Object.values(description.paths)
      .flatMap((item) => Object.keys(item))
      .filter((key) => key !== 'parameters');
    expect(count.length).toBe(ROUTES.length);
  });

  test('names every call by an identifier of its own', () => {
    const ids = ROUTES.map(([, , , { id }]) => id);
    expect(ids.filter((id) => !/^[a-z][A-Za-z]+$/.test(id))).toEqual([]);
    expect(new Set(ids).size).toBe(ids.length);
  });

  test('points only at what is there', () => {
    const references = [...JSON.stringify(description).matchAll(/"\$ref":"#\/components\/(\w+)\/([^"]+)"/g)];
    expect(references.length).toBeGreaterThan(50);
    const components = description.components as unknown as Record<string, Record<string, object>>;
    for (const [, kind = '', name = ''] of references) expect(components[kind]?.[name], name).toBeDefined();
    expect(Object.keys(description.components.responses).sort()).toEqual(Object.keys(PROBLEM_KINDS).sort());
  });

  test('gives the record whole, with units and examples', () => {
    const text = JSON.stringify(description.components.schemas.VisitRecord);
    for (const part of ['"weighing"', '"unit":"units.mass"', '"examples"']) expect(text).toContain(part);
  });
});
