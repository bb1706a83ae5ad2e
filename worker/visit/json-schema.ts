import * as z from 'zod';
import { VisitRecord } from './record.ts';

/** The record as JSON Schema 2020-12, with title, description, unit and example on every field. */
export function visitJsonSchema(): Record<string, unknown> {
  return {
    $id: '/v1/schema/visit.json',
    ...z.toJSONSchema(VisitRecord, { target: 'draft-2020-12', reused: 'inline' }),
  };
}
