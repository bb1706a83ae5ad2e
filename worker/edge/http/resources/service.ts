import * as z from 'zod';
import { smallJsonSchema, visitJsonSchema } from '../../../core/record/json-schema.ts';
import { json } from '../answer.ts';
import type { Operation } from '../route.ts';
import { OPEN_TO_ALL } from '../security-headers.ts';

const PUBLISHED = { 'Content-Type': 'application/json', 'Cache-Control': 'public, max-age=300' } as const;

export const getVisitSchema: Operation = {
  id: 'getVisitSchema',
  summary: 'The record as JSON Schema, for editors and tools',
  answers: {
    200: { description: 'JSON Schema 2020-12', content: { 'application/schema+json': z.looseObject({}) } },
  },
  handle: () => schemaAnswer(visitJsonSchema()),
};

export const getSmallSchema: Operation = {
  id: 'getSmallSchema',
  summary: 'A record that names the standing file as JSON Schema, for editors and tools',
  answers: {
    200: { description: 'JSON Schema 2020-12', content: { 'application/schema+json': z.looseObject({}) } },
  },
  handle: () => schemaAnswer(smallJsonSchema()),
};

function schemaAnswer(schema: object): Response {
  const headers = { ...PUBLISHED, 'Content-Type': 'application/schema+json', ...OPEN_TO_ALL };
  return new Response(`${JSON.stringify(schema, null, 2)}\n`, { headers });
}

export const getHealth: Operation = {
  id: 'getHealth',
  summary: 'Check that the service responds',
  answers: {
    200: { description: 'It responds', content: { 'application/json': z.object({ status: z.literal('ok') }) } },
  },
  handle() {
    const headers = { 'Content-Type': 'application/json', 'Cache-Control': 'no-store' };
    return new Response('{ "status": "ok" }\n', { headers });
  },
};

const Part = z.enum(['ok', 'failing']);

const Readiness = z
  .object({
    status: z.enum(['ready', 'failing']),
    objects: Part.meta({ description: 'Ledgers and workshops' }),
    blobs: Part.meta({ description: 'Sealed and uploaded files' }),
    list: Part.meta({ description: 'The list of all packs, without which everything else works' }),
  })
  .meta({ title: 'Readiness' });

export const getReadiness: Operation = {
  id: 'getReadiness',
  summary: 'Check that the storage can be read',
  description:
    'Reads a little of each kind of storage. For a supervisor; /healthz shows only that the service responds.',
  answers: {
    200: { description: 'It can be read', content: { 'application/json': Readiness } },
    503: { description: 'Ledgers or files cannot be read', content: { 'application/json': Readiness } },
  },
  async handle({ world }) {
    const { objects, blobs, list } = await world.archive.readiness();
    const isReady = objects && blobs;
    const said = (isWell: boolean) => (isWell ? 'ok' : 'failing');
    const body = {
      status: isReady ? 'ready' : 'failing',
      objects: said(objects),
      blobs: said(blobs),
      list: said(list),
    };
    return json(body, isReady ? 200 : 503, { 'Cache-Control': 'no-store' });
  },
};
