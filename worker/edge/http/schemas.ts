import * as z from 'zod';
import { Due } from '../../core/calc/lives/due-result.ts';
import { Counting, OpenItem } from '../../core/calc/open-items/open-item-result.ts';
import { PackSummary } from '../../core/pack/summary.ts';
import { SHA256 } from '../../core/patterns.ts';
import { AssessmentResults } from '../../core/pipeline/results-schema.ts';
import { COUNTS } from '../../core/record/counts.ts';
import { SCOPES } from '../../core/record/scopes.ts';
import { AUDIENCES, CHAIN_KINDS } from '../archive/ledger/ledger-calls.ts';
import { KEY_SCOPES } from '../archive/workshop/workshop-calls.ts';
import { Defect } from './problem.ts';

/** Schemas of responses, as in the API description. */
const sha256 = (description: string) => z.string().regex(SHA256).meta({ description });
const moment = (description: string) => z.string().meta({ description, format: 'date-time' });

/** Returns the schema of a list; the next page is in the `Link` header. */
export const listOf = <Item extends z.ZodType>(item: Item) => z.object({ items: z.array(item) });

export const AssessmentAnswer = z
  .object({
    recordSha256: sha256('Digest of the canonical record'),
    assessmentSha256: sha256('Digest over record, rule set and regime; named by a release'),
    isReleasable: z.boolean().meta({
      description: 'Whether nothing blocks a release; from this record only if `comparedWithEarlierPacks` is false',
    }),
    comparedWithEarlierPacks: z.boolean().meta({
      description: 'Whether open items of earlier packs are known; only for a kept visit',
    }),
    ruleSet: z.string(),
    regime: z.object({ id: z.string(), version: z.string() }),
    earlierIssue: z
      .object({
        pack: z.string(),
        issuedAt: z.string(),
        changes: z.array(z.object({ part: z.string(), before: z.unknown().optional(), now: z.unknown().optional() })),
      })
      .optional()
      .meta({ description: 'Issue that this record replaces, and what differs from it' }),
    findings: z.array(Defect),
    results: AssessmentResults,
  })
  .meta({ title: 'Assessment', description: 'Assessment of a record: findings, and unrounded results' });
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
      .meta({ description: 'Why a pack with this document is not an archival PDF; empty if it is' }),
    inks: z
      .record(z.string(), z.string())
      .optional()
      .meta({ description: 'Inks named in a document, each with figures of its mixture' }),
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
      .meta({ description: 'Work to print the file; the sum over all files of a pack is limited' }),
    inspection: z
      .int()
      .optional()
      .meta({ description: 'Version of the inspection that it passed; an earlier one is repeated' }),
    refusal: z.string().optional(),
    detail: z.string().optional(),
  })
  .meta({ title: 'Handed-in file' });

export const VisitState = z
  .object({
    visit: z.string(),
    version: z.int().meta({ description: 'Number of the kept version of the record' }),
    recordSha256: sha256('Digest of the canonical record; ETag of the visit'),
    updatedAt: moment('When this version was kept'),
    state: z.enum(['working', 'released']),
    pack: z.string().nullable().meta({ description: 'Newest pack of the visit' }),
  })
  .meta({ title: 'Visit state' });

export const KeptAnswer = VisitState.extend({
  assessmentSha256: sha256('ETag of the assessment; named by a release'),
  isReleasable: z.boolean(),
  findings: z.array(Defect),
}).meta({ title: 'Kept visit' });

export const PackAnswer = PackSummary.extend({
  supersededBy: z.string().nullable(),
  withdrawal: z
    .object({ at: moment('When it was withdrawn'), by: z.string(), reason: z.string() })
    .nullable()
    .meta({ description: 'Withdrawal of the pack' }),
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
    'Its name for the life of the aircraft: the number of the pack in which it first appeared, and its identifier there',
  examples: ['Q-SLM-P1/F4'],
});

const limitValue = z.union([z.number(), z.string()]).nullable();

const TighterLimit = z.object({
  id: z.string(),
  name: z.string(),
  quantity: z.enum(['mass', 'volume', 'arm', 'date', 'hours', ...COUNTS]),
  sealed: limitValue.meta({ description: 'Limit in the pack, in kg, l or mm; null if it has none' }),
  now: limitValue.meta({ description: 'Limit by the rules of today; null if nothing is allowed' }),
  governedBy: z.string().optional().meta({ description: 'Limit from which it follows' }),
  meter: z.string().optional(),
  counter: Counting.extend({ id: z.string().optional() })
    .optional()
    .meta({ description: 'Counter of a count, if the record names one' }),
});

const ComingDue = Due.extend({
  kind: OpenItem.shape.kind,
  basis: OpenItem.shape.basis.unwrap().optional(),
  openItem,
  of: z.string().meta({ description: 'What its hours count: airframe, engine or propeller' }),
  meter: z.string().optional().meta({ description: 'The meter, if the record names one' }),
});

export const DueAnswer = z
  .object({
    pack: z.string(),
    issuedAt: moment('When the pack was sealed'),
    withdrawn: z
      .string()
      .nullable()
      .meta({ description: 'A later pack that was withdrawn: there is no current release' }),
    comingDue: z.array(ComingDue).meta({
      description:
        'The one list of what is due: items, deferrals, and watched findings with a limit, the first due at the top',
    }),
    items: z.array(ComingDue).meta({ description: 'Due items, with recurring and open bulletins and directives' }),
    deferred: z
      .array(
        z.object({
          id: z.string(),
          openItem,
          text: z.string(),
          untilDate: z.string().optional(),
          untilHours: z.number().optional().meta({ description: 'Total hours' }),
          of: z.string().meta({ description: 'What its hours count: airframe, engine or propeller' }),
          meter: z.string().optional().meta({ description: 'The meter of the hours, if the record names one' }),
          daysLeft: z.number().optional(),
          hoursLeft: z.number().optional(),
          isOverdue: z.boolean(),
        }),
      )
      .meta({ description: 'Deferred findings' }),
    watched: z
      .array(z.object({ id: z.string(), openItem, text: z.string() }))
      .meta({ description: 'Findings to watch' }),
    limitations: z.array(z.object({ openItem, text: z.string() })),
    flightTests: z
      .array(z.object({ id: z.string(), openItem, text: z.string() }))
      .meta({ description: 'Outstanding flight tests' }),
    tighter: z
      .array(TighterLimit)
      .meta({ description: 'Limits that are lower by the rules of today than in the pack: the lower ones apply' }),
  })
  .meta({ title: 'Due list' });
export type DueAnswer = z.infer<typeof DueAnswer>;

export const DraftDocuments = z
  .object({
    assessmentSha256: sha256('ETag of the assessment of the documents'),
    items: z.array(z.object({ id: z.string(), title: z.string(), html: z.string() })),
  })
  .meta({ title: 'Draft documents' });

export const ChainEntry = z
  .object({
    seq: z.int(),
    at: moment('When it happened'),
    kind: z.enum(CHAIN_KINDS),
    body: z.string().meta({ description: 'JSON text; digested exactly as here' }),
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
    .array(z.object({ at: moment('When it was opened'), what: z.enum(['page', 'pdf', 'document', 'photograph']) }))
    .meta({ description: 'Latest openings, newest first' }),
}).meta({ title: 'Link and its use' });

export const NewLink = Link.extend({ url: z.string().meta({ description: 'Shown only once' }) }).meta({
  title: 'New link',
});

export const Key = z
  .object({
    key: z.string(),
    label: z.string(),
    scopes: z.array(z.enum(KEY_SCOPES)),
    person: z.string().nullable().meta({ description: 'Person who holds the key, as named in records' }),
    createdAt: moment('When it was made'),
    lastUsedAt: moment('When it was used last, to the hour').nullable(),
    revokedAt: moment('When it was revoked').nullable(),
  })
  .meta({ title: 'Key' });

export const Person = z
  .object({
    id: z.string().meta({ description: 'Identifier in records and keys' }),
    name: z.string(),
    capacity: z.string(),
    licence: z.string().nullable(),
    scope: z.array(z.enum(SCOPES)),
    from: z.string().nullable().meta({ description: 'First day on which the rights are valid' }),
    until: z.string().nullable().meta({ description: 'Last day on which the rights are valid' }),
    enteredAt: moment('When they were entered last'),
    enteredBy: z.string().meta({ description: 'Key that entered them' }),
  })
  .meta({ title: 'Person of the workshop' });

export const NewKey = Key.extend({
  secret: z.string().meta({ description: 'Text of the key; shown only once' }),
}).meta({ title: 'New key' });
