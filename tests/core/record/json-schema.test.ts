import { Ajv2020 } from 'ajv/dist/2020.js';
import addFormats from 'ajv-formats';
import { describe, expect, test } from 'vitest';
import { ANNOTATIONS, smallJsonSchema, visitJsonSchema } from '../../../worker/core/record/json-schema.ts';
import { type Operation, patched } from '../../json-patch.ts';
import { fixturesIn, readFixture } from '../../read-fixture.ts';

type Node = Record<string, unknown>;

const SCHEMA = visitJsonSchema();
const ajv = new Ajv2020({ allErrors: true, strict: true, strictTypes: false, keywords: [...ANNOTATIONS] });
addFormats.default(ajv);
const isValid = ajv.compile(SCHEMA);

/** Every subschema with its path. */
function nodesOf(node: Node, path: string): { node: Node; path: string }[] {
  const children = [
    ...Object.entries((node.properties ?? {}) as Record<string, Node>),
    ...(node.items ? [['[]', node.items as Node] as const] : []),
    ...((node.oneOf ?? node.anyOf ?? []) as Node[]).map((option, index) => [`<${index}>`, option] as const),
  ];
  return [{ node, path }, ...children.flatMap(([key, child]) => nodesOf(child, `${path}/${key}`))];
}

const NODES = nodesOf(SCHEMA, '');
const isLeaf = ({ type, enum: values, const: value }: Node): boolean =>
  values !== undefined || value !== undefined || ['string', 'number', 'integer', 'boolean'].includes(String(type));

describe('visitJsonSchema()', () => {
  test('reaches every part of the record', () => {
    expect(NODES.length).toBeGreaterThan(300);
    expect(NODES.filter(({ node }) => node.$ref !== undefined)).toEqual([]);
  });

  test('gives every field a title and a description', () => {
    const bare = NODES.filter(({ node }) => !(node.title && node.description)).map(({ path }) => path);
    expect(bare).toEqual([]);
  });

  test('gives every value an example that it accepts', () => {
    for (const { node, path } of NODES.filter((entry) => isLeaf(entry.node))) {
      const examples = node.examples as unknown[] | undefined;
      expect(examples, path).toHaveLength(1);
      const check = ajv.compile({ $schema: 'https://json-schema.org/draft/2020-12/schema', ...node });
      expect(check(examples?.[0]), `${path} ${JSON.stringify(check.errors)}`).toBe(true);
    }
  });

  test('gives every number a unit and bounds', () => {
    const isNumber = ({ type, const: fixed }: Node): boolean =>
      fixed === undefined && (type === 'number' || type === 'integer');
    for (const { node, path } of NODES.filter((entry) => isNumber(entry.node))) {
      expect(typeof node.unit, path).toBe('string');
      expect([typeof node.minimum, typeof node.maximum], path).toEqual(['number', 'number']);
    }
  });

  test('says what a field refers to, and between which times it lies', () => {
    const at = (path: string): Node | undefined => NODES.find((entry) => entry.path === path)?.node;
    expect(at('/attachments/[]/concerns')?.refersTo).toEqual([
      'finding',
      'modification',
      'part',
      'task',
      'bulletin',
      'found-wire',
    ]);
    expect(at('/weighing/by')?.refersTo).toEqual(['person']);
    expect(at('/findings/[]/id')?.identifies).toBe('finding');
    expect(at('/findings/[]/closedAt')).toMatchObject({
      notBefore: ['visit.arrivedAt', 'foundAt'],
      notAfter: ['visit.workEndedAt', 'now'],
    });
    expect(at('/wiring/found/[]/arm')?.within).toBe('airframe');
    expect(at('/aircraft/airframe/aft')?.within).toBeUndefined();
  });

  test('refuses unknown keys, and bounds every list and text', () => {
    for (const { node, path } of NODES) {
      // What is kept of the standing file is data of other records, and no rule reads it.
      if (node.type === 'object' && path !== '/standing/kept') expect(node.additionalProperties, path).toBe(false);
      if (node.type === 'array') expect(typeof node.maxItems, path).toBe('number');
      if (node.type === 'string' && !node.enum && !node.format && !node.pattern)
        expect(typeof node.maxLength, path).toBe('number');
    }
  });

  for (const name of fixturesIn('visits')) {
    test(`accepts fixtures/visits/${name}.json`, () => {
      expect(isValid(readFixture(`visits/${name}`)), JSON.stringify(isValid.errors)).toBe(true);
    });
  }

  for (const name of fixturesIn('rejects/records')) {
    test(`refuses fixtures/rejects/records/${name}.json, as the door does`, () => {
      const { of, patch } = readFixture(`rejects/records/${name}`) as { of: string; patch: Operation[] };
      expect(isValid(patched(readFixture(`visits/${of}`), patch))).toBe(false);
    });
  }
});

describe('smallJsonSchema()', () => {
  const ajv = new Ajv2020({ strict: false });
  addFormats.default(ajv);
  const isSmall = ajv.compile(smallJsonSchema());
  const visit = { arrivedAt: '2026-11-20T09:00:00+01:00', summary: 'Tyre replaced.' };
  const small = { schemaVersion: 4, standing: { pack: 'Q-SLM-P1-1', sha256: '0'.repeat(64) }, visit };

  test.each([
    ['the reference and the visit', small, true],
    ['a part of a part', { ...small, aircraft: { stations: [{ id: 'baggage', maximumMass: 20 }] } }, true],
    ['no reference', { schemaVersion: 4, visit }, false],
    ['a visit without its arrival', { ...small, visit: { summary: 'Tyre replaced.' } }, false],
    ['an unknown field', { ...small, aircraft: { colour: 'red' } }, false],
  ])('%s', (_, record, fits) => expect(isSmall(record), JSON.stringify(isSmall.errors)).toBe(fits));
});
