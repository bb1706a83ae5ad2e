import { describe, expect, test } from 'vitest';
import { partExample } from '../../site/build/part-examples.ts';
import { PART_GUIDES } from '../../site/build/part-guides.ts';
import { visitJsonSchema } from '../../worker/core/record/json-schema.ts';
import { readRecord } from '../../worker/core/record/read-record.ts';
import { exampleRecord } from '../../worker/local/service/example-visit.ts';

/** Parts of the record: what is no single value. */
const PARTS = Object.entries(visitJsonSchema().properties ?? {}).flatMap(([name, { type }]) =>
  type === 'object' || type === 'array' ? [name] : [],
);

describe('the guide to the record', () => {
  test('has a text for every part and for no other', () => {
    expect([...PART_GUIDES.keys()].sort()).toEqual([...PARTS].sort());
  });

  test.each(PARTS)('has an example of %s that is taken as it stands', (name) => {
    const example = partExample(name);
    expect(example).toBeDefined();
    const source = ['weighing-only', 'nose-wheel-full', 'trike'].find((record) => name in exampleRecord(record));
    const record = { ...exampleRecord(source ?? 'nose-wheel-full'), [name]: example };
    const { issues } = readRecord(record) as { issues?: readonly { pointer: string }[] };
    expect((issues ?? []).filter(({ pointer }) => pointer.startsWith(`/${name}`))).toEqual([]);
  });
});
