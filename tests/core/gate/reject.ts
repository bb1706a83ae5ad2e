import type { ArchiveFacts } from '../../../worker/core/gate/rule.ts';
import { mergePatch } from '../../../worker/edge/http/merge-patch.ts';
import { type Operation, patched } from '../../json-patch.ts';
import { readFixture } from '../../read-fixture.ts';
import { RELEASABLE_AT } from './assess-record.ts';

/** What `fixtures/rejects/<CODE>.json` or `<CODE>.<variant>.json` holds: a visit, what is done to it, and what must follow. */
export interface Reject {
  of: string;
  at?: string;
  facts?: ArchiveFacts;
  /** A JSON Merge Patch, or a list of JSON Patch operations. */
  patch: object | Operation[];
  pointer: string;
  /** Codes of other findings that block, and cannot be had apart. */
  also?: string[];
}

/** The record of a reject, and the moment at which it is assessed. */
export function rejectedRecord({ of, at = RELEASABLE_AT[of] ?? '', patch }: Reject): { record: unknown; at: string } {
  const base = readFixture(`visits/${of}`);
  return { record: Array.isArray(patch) ? patched(base, patch) : mergePatch(base, patch), at };
}
