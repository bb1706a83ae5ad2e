import * as z from 'zod';
import { OpenItem } from '../../core/calc/open-items/open-item-result.ts';
import { SHA256 } from '../../core/patterns.ts';
import { Person } from './schemas.ts';

/** Schemas of responses about standing files. */
const loose = z.looseObject({});

export const NextAnswer = z
  .object({
    pack: z.string().nullable().meta({ description: 'Newest release; null for an aircraft without one' }),
    record: loose.meta({ description: 'Beginning of the next record' }),
    lacks: z
      .array(z.object({ pointer: z.string(), remedy: z.string() }))
      .meta({ description: 'What it still needs to fit the schema' }),
    sections: loose.meta({
      description: 'Sections of the standing file, as in a record: the record need not repeat them',
    }),
    open: z.array(OpenItem).meta({ description: 'Open items, the first due at the top' }),
    readings: loose.meta({ description: 'Last meter readings' }),
    people: z
      .array(Person)
      .optional()
      .meta({ description: 'People of the workshop: a record need not repeat those that it names' }),
    hints: loose.optional().meta({ description: 'What the class of the aircraft can have and needs' }),
  })
  .meta({ title: 'Next record' });
export type NextAnswer = z.infer<typeof NextAnswer>;

const StandingReference = z.object({
  pack: z.string(),
  sha256: z.string().regex(SHA256).meta({ description: 'Digest of the sealed record' }),
});

const PartChange = z.object({
  part: z.string().meta({ description: 'Path by members and names of entries' }),
  before: z.unknown().optional(),
  now: z.unknown().optional(),
});

export const StandingState = z
  .object({
    named: StandingReference.nullable().meta({ description: 'File that the record names' }),
    newest: StandingReference.nullable().meta({ description: 'File after the newest release before the visit' }),
    isNewest: z.boolean(),
    changes: z
      .array(PartChange.extend({ isStated: z.boolean().meta({ description: 'The record states it itself' }) }))
      .meta({ description: 'What the newest file changed' }),
    open: z.array(PartChange).meta({ description: 'Open items that changed' }),
  })
  .meta({ title: 'Standing file of a visit' });
export type StandingState = z.infer<typeof StandingState>;
