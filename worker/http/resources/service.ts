import * as z from 'zod';
import { visitJsonSchema } from '../../visit/json-schema.ts';
import type { Operation } from '../route.ts';

const PUBLISHED = { 'Content-Type': 'application/json', 'Cache-Control': 'public, max-age=300' } as const;

export const getVisitSchema: Operation = {
  id: 'getVisitSchema',
  summary: 'The record as JSON Schema, for editors and tools',
  answers: {
    200: { description: 'JSON Schema 2020-12', content: { 'application/schema+json': z.looseObject({}) } },
  },
  handle() {
    const headers = { ...PUBLISHED, 'Content-Type': 'application/schema+json', 'Access-Control-Allow-Origin': '*' };
    return new Response(`${JSON.stringify(visitJsonSchema(), null, 2)}\n`, { headers });
  },
};

export const getHealth: Operation = {
  id: 'getHealth',
  summary: 'Whether the service answers',
  answers: {
    200: { description: 'It does', content: { 'application/json': z.object({ status: z.literal('ok') }) } },
  },
  handle() {
    const headers = { 'Content-Type': 'application/json', 'Cache-Control': 'no-store' };
    return new Response('{ "status": "ok" }\n', { headers });
  },
};
