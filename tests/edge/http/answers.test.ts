import { createExecutionContext } from 'cloudflare:test';
import { env } from 'cloudflare:workers';
import { describe, expect, test } from 'vitest';
import { SCHEMA_VERSION } from '../../../worker/core/record/upgrades.ts';
import { ROUTES } from '../../../worker/edge/http/routes.ts';
import worker from '../../../worker/index.ts';
import { keep, testService, VISIT } from '../service.ts';

const addressOf = (path: string): string => path.replaceAll(/\{\w+\}/g, 'x');

describe('answers', () => {
  test('to addresses that do not exist are problems', async () => {
    const { call } = await testService();
    for (const path of ['/v2', '/v1/aircrafts', `${VISIT}/`, '/v1/aircraft/Q-TST/visits/v1/nothing']) {
      const response = await call(path);
      expect(response.status).toBe(404);
      expect(response.headers.get('Content-Type')).toBe('application/problem+json');
    }
  });

  test('to methods that are not offered name those that are', async () => {
    const { call } = await testService();
    const response = await call(VISIT, { method: 'DELETE' });
    expect(response.status).toBe(405);
    expect(response.headers.get('Allow')).toBe('GET, HEAD, PUT, PATCH');
    expect((await call(`${VISIT}/release`)).headers.get('Allow')).toBe('POST');
  });

  test('of every route carry the security headers, and no route answers a stranger with a failure', async () => {
    const { call } = await testService();
    for (const [method, path] of ROUTES) {
      const response = await call(addressOf(path), { method, key: '' });
      expect(response.status, `${method} ${path}`).toBeLessThan(500);
      for (const name of ['X-Content-Type-Options', 'Content-Security-Policy', 'Referrer-Policy', 'X-Frame-Options'])
        expect(response.headers.has(name), `${method} ${path} ${name}`).toBe(true);
    }
  });

  test('of every route that is not public ask for a key before anything else', async () => {
    const { call } = await testService();
    for (const [method, path, access] of ROUTES.filter(([, , access]) => access !== 'public'))
      expect((await call(addressOf(path), { method, key: '' })).status, `${access} ${method} ${path}`).toBe(401);
  });

  test('to a failure of ours say nothing of it, and the log names the route but no address', async () => {
    const service = await testService({
      pipeline: {
        assessmentAnswer() {
          throw new Error('secret detail');
        },
      },
    });
    await keep(service);
    const response = await service.call(`${VISIT}/assessment`);
    expect(response.status).toBe(500);
    expect(await response.text()).not.toContain('secret detail');
    const route = '/v1/aircraft/{registration}/visits/{visit}/assessment';
    expect(service.events).toContainEqual({
      code: 'UNEXPECTED_FAILURE',
      route,
      name: 'Error',
      message: 'secret detail',
    });
  });

  test('of the Worker itself come from the real stages', async () => {
    const ask = (path: string) =>
      worker.fetch(new Request(`https://slipmark.example${path}`) as never, env, createExecutionContext());
    const health = await ask('/healthz');
    expect(await health.json()).toEqual({ status: 'ok' });
    const schema = await ask('/v1/schema/visit.json');
    expect(schema.headers.get('Content-Type')).toBe('application/schema+json');
    expect(await schema.json()).toMatchObject({
      type: 'object',
      properties: { schemaVersion: { const: SCHEMA_VERSION } },
    });
  });
});
