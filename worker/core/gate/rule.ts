import type { OpenItem } from '../calc/open-items/open-item.ts';
import type { Readings } from '../calc/open-items/readings.ts';
import type { Results } from '../calc/results.ts';
import type { EarlierIssue } from '../record/earlier-issue.ts';
import { pointer } from '../record/pointer.ts';
import type { Place } from '../record/record-index.ts';
import type { Restated } from '../record/restated.ts';
import type { StandingFile } from '../record/standing-file.ts';
import type { Visit } from '../record/visit.ts';
import type { Fault } from '../text/faults.ts';
import { type Message, type Said, said } from '../text/message.ts';
import type { Finding, Severity } from './finding.ts';
import type { WorkEvent } from './obligations/event.ts';
import type { Requirement } from './obligations/requirement.ts';
import type { Regime, RegimeValue } from './regimes/regime.ts';
import { mayBlock, type Source } from './source.ts';

export { memory, PRACTICE, read } from './source.ts';

/** Cost of printing a file, counted at its inspection. */
export interface AttachmentWork {
  /** Unpacked bytes of a document. */
  unpackedBytes?: number;
  objects?: number;
  /** Drawing steps of the pages of a document. */
  tokens?: number;
  /** Unpacked pixels of a picture that is transparent or interlaced. */
  unpackedPixels?: number;
}

/** Result of inspecting an attached file; `inspection` is the version of the inspection. */
export type AttachmentFact =
  | {
      ok: true;
      kind: 'pdf';
      bytes: number;
      pages: number;
      obstacles: readonly (Fault | string)[];
      work?: AttachmentWork;
      /** Mixture of each named ink, in a few figures. */
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

/** Person in the people table of the workshop. */
export interface RegisteredPerson {
  id: string;
  name: string;
  capacity: string;
  licence: string | null;
  /** Scopes that the person may sign for, as in the record. */
  scope: readonly string[];
  /** First and last day of validity; null if open. */
  from: string | null;
  until: string | null;
}

/** Facts from the archive, in addition to the record. */
export interface ArchiveFacts {
  /** By SHA-256; files that were not received are missing. */
  attachments?: Readonly<Record<string, AttachmentFact>>;
  /** Newest pack before this visit that was not withdrawn. */
  lastPack?: { pack: string; issuedAt: string; visit: string; recordSha256: string };
  /** Packs between that one and this visit that were withdrawn and not replaced. */
  withdrawnPacks?: readonly string[];
  /** Newest issue of the pack of this visit, with its record as sealed, in the present version. */
  earlierIssue?: { pack: string; issuedAt: string; record: unknown };
  /** Packs after this visit that were not withdrawn. */
  laterPacks?: readonly string[];
  /** Items that earlier packs of the aircraft left open. */
  open?: readonly OpenItem[];
  /** Last meter readings of earlier visits. */
  readings?: Readings;
  /** Standing file that the record names. */
  standing?: StandingFile;
  /** Standing file after the newest pack, if the record names that of another pack, or none. */
  newerStanding?: StandingFile;
  /** Newest pack under the marks of the named standing file, if this aircraft has none under its present marks. */
  lastUnderOtherMarks?: { pack: string; recordSha256: string };
  /** Workshop and key that sealed the named standing file, if another workshop did; whether its key is known here. */
  standingSealedBy?: { workshop: string; kid: string; isKnown: boolean };
  /** People table of the workshop, if it has one. */
  people?: readonly RegisteredPerson[];
}

/** Input of a rule. */
export interface RuleInput {
  visit: Visit;
  results: Results;
  regime: Regime;
  /** Time of the assessment; rules have no clock. */
  at: string;
  facts: ArchiveFacts;
  /** Issue that the record replaces, and what differs from it. */
  earlierIssue: EarlierIssue | undefined;
  /** Parts of its standing file, or of the newest if it names none, that the record states otherwise. */
  restated: readonly Restated[];
  /** What happened at this visit, and what it requires. */
  events: readonly WorkEvent[];
  requirements: readonly Requirement[];
  /** Codes of the cautions found; empty until all are found. */
  cautionCodes: ReadonlySet<string>;
  /** Figures of these cautions by code. */
  cautionFigures: ReadonlyMap<string, readonly number[]>;
  /** All fields of the record that name a person or state a time; used by several rules. */
  people: readonly Place<'person'>[];
  timestamps: readonly Place<'timestamp'>[];
}

/** One violation of a rule. */
export interface Hit {
  path: readonly (string | number)[] | string;
  sentence: Said;
  data?: Finding['data'];
}

/** One, several or none. */
export type Hits<Of = Hit> = Of | readonly Of[] | undefined;

export interface Rule {
  /** Never changes. */
  code: string;
  severity: Severity;
  /** One fact for the list of rules, up to 20 words. */
  meaning: string;
  /** What to do, in up to two steps. */
  remedy: Message;
  source: Source;
  /** Values of the regime by which the rule decides. A rule that blocks is silent if one of them was not read. */
  values?: readonly RegimeValue[];
  check(input: RuleInput): Hits;
}

/** Whether a rule may block by values of a regime: each was read, is a custom of the trade, or is not set. */
export function mayBlockBy(regime: Regime, values: readonly RegimeValue[]): boolean {
  return values.every((name) => regime[name].value === null || mayBlock(regime[name].source));
}

/** Finds every violation of a rule. */
export function findingsOf(rule: Rule, input: RuleInput): Finding<Said>[] {
  if (rule.severity === 'blocks' && !mayBlockBy(input.regime, rule.values ?? [])) return [];
  return [rule.check(input) ?? []].flat().map(({ path, sentence, data = {} }) => ({
    code: rule.code,
    severity: rule.severity,
    pointer: typeof path === 'string' ? path : pointer(...path),
    sentence,
    remedy: said(rule.remedy),
    source: rule.source.text,
    data,
  }));
}
