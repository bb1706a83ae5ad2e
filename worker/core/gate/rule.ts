import type { OpenItem } from '../calc/open-items/open-item.ts';
import type { Readings } from '../calc/open-items/readings.ts';
import type { Results } from '../calc/results.ts';
import { pointer } from '../record/pointer.ts';
import type { Place } from '../record/record-index.ts';
import type { Visit } from '../record/visit.ts';
import type { Fault } from '../text/faults.ts';
import { type Message, type Said, said } from '../text/message.ts';
import type { Finding, Severity } from './finding.ts';
import type { Regime } from './regimes/regime.ts';
import type { Source } from './source.ts';

export { memory, PRACTICE, read } from './source.ts';

/** What it costs to print a file, counted when it was looked into. */
export interface AttachmentWork {
  /** Bytes of a paper that are unpacked and held. */
  unpackedBytes?: number;
  objects?: number;
  /** Steps in which the pages of a paper are drawn. */
  tokens?: number;
  /** Pixels of a picture that are unpacked, because it is transparent or interlaced. */
  unpackedPixels?: number;
}

/** What looking into the file of an attachment gave; `inspection` tells which looking it was. */
export type AttachmentFact =
  | {
      ok: true;
      kind: 'pdf';
      bytes: number;
      pages: number;
      obstacles: readonly (Fault | string)[];
      work?: AttachmentWork;
      /** How each ink that it names is mixed, in a few figures. */
      inks?: Readonly<Record<string, string>>;
      inspection?: number;
    }
  | {
      ok: true;
      kind: 'jpeg' | 'png';
      bytes: number;
      widthPx: number;
      heightPx: number;
      work?: AttachmentWork;
      inspection?: number;
    }
  | { ok: false; refusal: string; detail: Fault | string };

/** Somebody as the workshop knows them. */
export interface RegisteredPerson {
  id: string;
  name: string;
  capacity: string;
  licence: string | null;
  /** What they may sign for, in the words of the record. */
  scope: readonly string[];
  /** First and last day on which that holds; null where there is none. */
  from: string | null;
  until: string | null;
}

/** What the archive knows beyond the record. */
export interface ArchiveFacts {
  /** By SHA-256; a file that was not handed in is not here. */
  attachments?: Readonly<Record<string, AttachmentFact>>;
  /** The newest pack of before this visit that was not withdrawn. */
  lastPack?: { pack: string; issuedAt: string; visit: string; recordSha256: string };
  /** Packs of before this visit, later than that one, that were withdrawn and not replaced. */
  withdrawnPacks?: readonly string[];
  /** Packs of after this visit that stand. */
  laterPacks?: readonly string[];
  /** What earlier packs of the aircraft left open. */
  open?: readonly OpenItem[];
  /** Meters as they were read last at earlier visits. */
  readings?: Readings;
  /** The people of the workshop, where it keeps a table of them. */
  people?: readonly RegisteredPerson[];
}

/** All that a rule may look at. */
export interface RuleInput {
  visit: Visit;
  results: Results;
  regime: Regime;
  /** The moment of the assessment; the gate has no clock. */
  at: string;
  facts: ArchiveFacts;
  /** Codes of the cautions that arose; empty while they are being looked for. */
  cautionCodes: ReadonlySet<string>;
  /** Every place where the record names a person, and every time that it states: several rules look at them. */
  people: readonly Place<'person'>[];
  timestamps: readonly Place<'timestamp'>[];
}

/** One place where a rule is not met. */
export interface Hit {
  path: readonly (string | number)[] | string;
  sentence: Said;
  data?: Finding['data'];
}

export interface Rule {
  /** Stable for ever. */
  code: string;
  severity: Severity;
  /** What it means, for the catalogue. */
  meaning: string;
  /** What to do, in one sentence. */
  remedy: Message;
  source: Source;
  check(input: RuleInput): Hit[];
}

/** The findings of one rule. */
export function findingsOf(rule: Rule, input: RuleInput): Finding<Said>[] {
  return rule.check(input).map(({ path, sentence, data = {} }) => ({
    code: rule.code,
    severity: rule.severity,
    pointer: typeof path === 'string' ? path : pointer(...path),
    sentence,
    remedy: said(rule.remedy),
    source: rule.source.text,
    data,
  }));
}
