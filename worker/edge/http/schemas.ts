import * as z from 'zod';
import { Due } from '../../core/calc/lives/due-result.ts';
import { OpenItem } from '../../core/calc/open-items/open-item-result.ts';
import { PackSummary } from '../../core/pack/summary.ts';
import { SHA256 } from '../../core/patterns.ts';
import { AssessmentResults } from '../../core/pipeline/results-schema.ts';
import { SCOPES } from '../../core/record/scopes.ts';
import { AUDIENCES, CHAIN_KINDS } from '../archive/ledger/ledger-calls.ts';
import { KEY_SCOPES } from '../archive/workshop/workshop-calls.ts';
import { Defect } from './problem.ts';

/** Shapes of the answers, as the interface description gives them. */
const sha256 = (description: string) => z.string().regex(SHA256).meta({ description });
const moment = (description: string) => z.string().meta({ description, format: 'date-time' });

/** A list in an answer; the next page is in the `Link` header. */
export const listOf = <Item extends z.ZodType>(item: Item) => z.object({ items: z.array(item) });

export const AssessmentAnswer = z
  .object({
    recordSha256: sha256('Digest of the canonical record'),
    assessmentSha256: sha256('Digest over record, rule set and regime: what a release names'),
    isReleasable: z.boolean().meta({
      description:
        'Whether nothing stands against a release; over this record alone where `comparedWithEarlierPacks` is false',
    }),
    comparedWithEarlierPacks: z.boolean().meta({
      description: 'Whether it is known what earlier packs of the aircraft left open; only for a visit that is kept',
    }),
    ruleSet: z.string(),
    regime: z.object({ id: z.string(), version: z.string() }),
    findings: z.array(Defect),
    results: AssessmentResults,
  })
  .meta({ title: 'Assessment', description: 'What the core makes of a record: findings, and results unrounded' });
export type AssessmentAnswer = z.infer<typeof AssessmentAnswer>;

export const AttachmentAnswer = z
  .object({
    sha256: sha256('Digest of the file'),
    ok: z.boolean().meta({ description: 'Whether it can go into a pack' }),
    kind: z.enum(['pdf', 'jpeg', 'png']).optional(),
    bytes: z.int().optional(),
    pages: z.int().optional(),
    obstacles: z
      .array(z.string())
      .optional()
      .meta({ description: 'Why a pack with this paper is no archival PDF; empty when it is' }),
    inks: z
      .record(z.string(), z.string())
      .optional()
      .meta({ description: 'Inks that a paper names, each with a few figures that tell how it is mixed' }),
    widthPx: z.int().optional(),
    heightPx: z.int().optional(),
    work: z
      .object({
        unpackedBytes: z.int().optional(),
        objects: z.int().optional(),
        tokens: z.int().optional(),
        unpackedPixels: z.int().optional(),
      })
      .optional()
      .meta({ description: 'What it costs to print the file, counted; all files of a pack together are bounded' }),
    inspection: z.int().optional().meta({ description: 'Which inspection it passed; an earlier one is made again' }),
    refusal: z.string().optional(),
    detail: z.string().optional(),
  })
  .meta({ title: 'Handed-in file' });

export const VisitState = z
  .object({
    visit: z.string(),
    version: z.int().meta({ description: 'Counts the kept forms of the record' }),
    recordSha256: sha256('Digest of the canonical record; ETag of the visit'),
    updatedAt: moment('When this form was kept'),
    state: z.enum(['working', 'released']),
    pack: z.string().nullable().meta({ description: 'Newest pack of the visit' }),
  })
  .meta({ title: 'Visit state' });

export const KeptAnswer = VisitState.extend({
  assessmentSha256: sha256('ETag of the assessment, to be named by a release'),
  isReleasable: z.boolean(),
  findings: z.array(Defect),
}).meta({ title: 'Kept visit' });

export const PackAnswer = PackSummary.extend({
  supersededBy: z.string().nullable(),
  withdrawal: z
    .object({ at: moment('When'), by: z.string(), reason: z.string() })
    .nullable()
    .meta({ description: 'Why the pack no longer stands' }),
  previous: z.string().nullable().meta({ description: 'Pack sealed before this one for the same aircraft' }),
  manifestSha256: sha256('Digest of manifest.json'),
  pdfSha256: sha256('Digest of pack.pdf; its ETag'),
  recordSha256: sha256('Digest of record.json; its ETag'),
  files: z.object({ pdf: z.string(), record: z.string(), manifest: z.string() }),
}).meta({ title: 'Pack' });

export const IndexedPack = PackSummary.extend({
  supersededBy: z.string().nullable(),
  withdrawnAt: moment('Since when it is withdrawn').nullable(),
}).meta({ title: 'Indexed pack' });

export const KnownAircraftAnswer = z
  .object({
    workshop: z.string().meta({ description: 'Identifier of the workshop of the key' }),
    items: z.array(z.object({ registration: z.string() })),
  })
  .meta({ title: 'Aircraft of the workshop' });

export const AircraftAnswer = z
  .object({
    registration: z.string(),
    visits: z.int(),
    packs: z.int(),
    newest: PackAnswer.nullable(),
    head: z.object({ seq: z.int(), digest: sha256('Digest of the last entry of the chain') }),
  })
  .meta({ title: 'Aircraft overview' });

const openItem = z.string().meta({
  description:
    'Its name for the life of the aircraft: the pack number in which it first stood, and its identifier there',
  examples: ['Q-SLM-P1/F4'],
});

const limitValue = z.union([z.number(), z.string()]).nullable();

const TighterLimit = z.object({
  id: z.string(),
  name: z.string(),
  quantity: z.enum(['mass', 'volume', 'arm', 'date', 'hours', 'landings']),
  sealed: limitValue.meta({ description: 'As the pack says, in kg, l or mm; null where it says nothing' }),
  now: limitValue.meta({ description: 'By the rules of today; null where nothing is allowed' }),
  governedBy: z.string().optional().meta({ description: 'The limit that it follows from' }),
  meter: z.string().optional(),
});

export const DueAnswer = z
  .object({
    pack: z.string(),
    issuedAt: moment('When the pack was sealed'),
    withdrawn: z.string().nullable().meta({ description: 'A later pack that was withdrawn: no release stands' }),
    items: z
      .array(
        Due.extend({
          basis: OpenItem.shape.basis.unwrap().optional(),
          openItem,
          of: z.string().meta({ description: 'What its hours count: airframe, engine or propeller' }),
          meter: z.string().optional().meta({ description: 'The meter, where the record names one' }),
        }),
      )
      .meta({ description: 'What comes due, recurring and open bulletins and directives among it' }),
    deferred: z
      .array(
        z.object({
          id: z.string(),
          openItem,
          text: z.string(),
          untilDate: z.string().optional(),
          untilHours: z.number().optional().meta({ description: 'Total hours' }),
          of: z.string().meta({ description: 'What its hours are counted of' }),
          meter: z
            .string()
            .optional()
            .meta({ description: 'The meter that they are read on, where the record names one' }),
          daysLeft: z.number().optional(),
          hoursLeft: z.number().optional(),
          isOverdue: z.boolean(),
        }),
      )
      .meta({ description: 'Findings that were put off' }),
    watched: z
      .array(z.object({ id: z.string(), openItem, text: z.string() }))
      .meta({ description: 'Findings that are to be watched' }),
    limitations: z.array(z.object({ openItem, text: z.string() })),
    flightTests: z.array(z.object({ id: z.string(), openItem, text: z.string() })).meta({ description: 'Still owed' }),
    tighter: z
      .array(TighterLimit)
      .meta({ description: 'What the rules of today allow less of than the pack says: keep to the lesser' }),
  })
  .meta({ title: 'Due list' });
export type DueAnswer = z.infer<typeof DueAnswer>;

export const DraftDocuments = z
  .object({
    assessmentSha256: sha256('ETag of the assessment that the documents follow'),
    items: z.array(z.object({ id: z.string(), title: z.string(), html: z.string() })),
  })
  .meta({ title: 'Draft documents' });

export const ChainEntry = z
  .object({
    seq: z.int(),
    at: moment('When it happened'),
    kind: z.enum(CHAIN_KINDS),
    body: z.string().meta({ description: 'JSON text; digested as it stands here' }),
    previous: sha256('Digest of the entry before'),
    digest: sha256('SHA-256 of the UTF-8 text of the JSON array [previous, seq, at, kind, body], without spaces'),
  })
  .meta({ title: 'Ledger entry' });

export const Link = z
  .object({
    link: z.string(),
    number: z.int().meta({ description: 'Pack number that the link follows' }),
    audience: z.enum(AUDIENCES),
    createdAt: moment('When it was made'),
    expiresAt: moment('When it ends'),
    revokedAt: moment('When it was revoked').nullable(),
  })
  .meta({ title: 'Link' });

export const UsedLink = Link.extend({
  timesOpened: z.int(),
  openings: z
    .array(z.object({ at: moment('When'), what: z.enum(['page', 'pdf', 'document', 'photograph']) }))
    .meta({ description: 'The latest, newest first' }),
}).meta({ title: 'Link and its use' });

export const NewLink = Link.extend({ url: z.string().meta({ description: 'Shown this once' }) }).meta({
  title: 'New link',
});

export const Key = z
  .object({
    key: z.string(),
    label: z.string(),
    scopes: z.array(z.enum(KEY_SCOPES)),
    person: z.string().nullable().meta({ description: 'In whose hand it is, as records name people' }),
    createdAt: moment('When it was made'),
    lastUsedAt: moment('When it was used last, to the hour').nullable(),
    revokedAt: moment('When it was revoked').nullable(),
  })
  .meta({ title: 'Key' });

export const Person = z
  .object({
    id: z.string().meta({ description: 'As records and keys name the person' }),
    name: z.string(),
    capacity: z.string(),
    licence: z.string().nullable(),
    scope: z.array(z.enum(SCOPES)),
    from: z.string().nullable().meta({ description: 'First day on which that holds' }),
    until: z.string().nullable().meta({ description: 'Last day on which that holds' }),
    enteredAt: moment('When they were entered last'),
    enteredBy: z.string().meta({ description: 'By which key' }),
  })
  .meta({ title: 'Person of the workshop' });

export const NewKey = Key.extend({
  secret: z.string().meta({ description: 'Text of the key; shown this once' }),
}).meta({ title: 'New key' });
