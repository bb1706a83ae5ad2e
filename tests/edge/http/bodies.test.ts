import { describe, expect, test } from 'vitest';
import { LIMITS } from '../../../worker/core/limits.ts';
import { testService } from '../service.ts';

const { call, events } = await testService();
events.length = 0;
const post = (body: unknown, headers: Record<string, string> = { 'Content-Type': 'application/json' }) =>
  call('/v1/assessments', { method: 'POST', body, headers });

describe('body of a request', () => {
  test('is refused over the limit by its announced length', async () => {
    const response = await post(' '.repeat(LIMITS.bodyBytes + 1));
    expect(response.status).toBe(413);
  });

  test('is refused over the limit when it comes in chunks and announces no length', async () => {
    let sent = 0;
    const endless = new ReadableStream<Uint8Array>({
      pull(controller) {
        sent += 65_536;
        controller.enqueue(new Uint8Array(65_536).fill(0x20));
      },
    });
    const response = await post(endless);
    expect(response.status).toBe(413);
    expect(sent).toBeLessThan(LIMITS.bodyBytes * 2);
  });

  test('that breaks off is refused, and is no failure of the service', async () => {
    let pieces = 0;
    const broken = new ReadableStream<Uint8Array>({
      pull(controller) {
        if (pieces++ > 0) controller.error(new Error('connection lost'));
        else controller.enqueue(new TextEncoder().encode('{"aircraft":'));
      },
    });
    const response = await post(broken);
    expect(response.status).toBe(400);
    expect(await response.json()).toMatchObject({ type: '/problems/malformed-request' });
    expect(events).toEqual([]);
  });

  test.each([
    ['no type', {}],
    ['another type', { 'Content-Type': 'text/csv' }],
    ['a coded body', { 'Content-Type': 'application/json', 'Content-Encoding': 'gzip' }],
  ])('is refused with %s before it is read', async (_name, headers) => {
    expect((await post('{"broken', headers as unknown as Record<string, string>)).status).toBe(415);
  });

  test.each([
    ['{\n  "a": 1,\n  "b": }', 3, 8],
    ['{"a": 1', 1, 8],
    ['', 1, 1],
    ['{"a": 1} x', 1, 10],
    ["{'a': 1}", 1, 2],
    ['{"a": 1,}', 1, 9],
    ['{"a": 1 // no\n}', 1, 9],
  ])('that is not JSON is refused with its place: %j', async (text, line, column) => {
    const response = await post(text);
    expect(response.status).toBe(400);
    expect(await response.json()).toMatchObject({ type: '/problems/malformed-json', line, column });
  });

  test('that is not UTF-8 is refused', async () => {
    expect((await post(new Uint8Array([0x22, 0xff, 0x22]))).status).toBe(400);
  });

  test.each([
    ['{"a": {"b": 1, "c": [0, {"d": 1, "d": 2}]}}', 'JSON_KEY_TWICE', '/a/c/1/d'],
    ['{"a": 1, "\\u0061": 2}', 'JSON_KEY_TWICE', '/a'],
    ['{"a": [{"__proto__": {}}]}', 'JSON_KEY_FORBIDDEN', '/a/0/__proto__'],
    ['{"a/b": {"x": 1, "x": 1}}', 'JSON_KEY_TWICE', '/a~1b/x'],
  ])('with a key that a record cannot have is refused with its place: %j', async (text, code, pointer) => {
    const response = await post(text);
    expect(response.status).toBe(422);
    expect(await response.json()).toMatchObject({ findings: [{ code, pointer }] });
  });

  test('nested without end is refused, closed or not', async () => {
    for (const text of [`${'['.repeat(100_000)}${']'.repeat(100_000)}`, '{"a":'.repeat(100_000)]) {
      const response = await post(text);
      expect(response.status).toBe(422);
      expect(await response.json()).toMatchObject({ findings: [{ code: 'JSON_TOO_DEEP' }] });
    }
  });

  test.each([
    ['[},', 400],
    ['{],', 400],
    ['[,', 422],
    ['{"a"{', 422],
  ])('of %s over and over is refused, and is no failure of the service', async (piece, status) => {
    expect((await post(piece.repeat(20_000))).status).toBe(status);
    expect(events).toEqual([]);
  });

  test('with more keys than any object has is refused as such', async () => {
    const keys = Array.from({ length: 90_000 }, (_, i) => `"k${i}":1`).join(',');
    const response = await post(`{${keys}}`);
    expect(response.status).toBe(422);
    expect(await response.json()).toMatchObject({ findings: [{ code: 'JSON_KEYS_TOO_MANY', pointer: '' }] });
  });

  test('that is JSON but no record is refused with the issues', async () => {
    for (const text of ['null', '1', '"x"', '[]', 'true']) expect((await post(text)).status, text).toBe(422);
  });
});
