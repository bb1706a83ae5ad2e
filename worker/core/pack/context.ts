import type { Assessment } from '../gate/gate.ts';
import type { ReleasedVisit } from '../gate/release.ts';
import { recordFormatter } from '../record/record-formatter.ts';
import type { Formatter } from '../text/formatter.ts';
import type { Locale } from '../text/locale.ts';
import type { PackIdentity } from './identity.ts';

/** Data available to a view. */
export interface PackContext
  extends Pick<Assessment, 'visit' | 'results' | 'regime' | 'earlierIssue' | 'restated' | 'findings' | 'attachments'> {
  /** Undefined in a draft. */
  identity: PackIdentity | undefined;
  /** Time at which the pack was issued, or the draft was made. */
  issuedAt: string;
  /** Present only if the release check released the visit. */
  released: ReleasedVisit | undefined;
  /** SHA-256 of the record in canonical JSON, in hex. */
  recordSha256: string;
  fmt: Formatter;
}

interface ContextOptions {
  /** Identity of an issued pack, or the time of a draft. */
  of: PackIdentity | { draftAt: string };
  recordSha256: string;
  released?: ReleasedVisit;
  /**
   * @default locale of the record
   */
  locale?: Locale;
}

export function packContext(
  assessment: Assessment,
  { of, recordSha256, released, locale }: ContextOptions,
): PackContext {
  const { visit, results, regime, earlierIssue, restated, findings, attachments } = assessment;
  return {
    visit,
    results,
    regime,
    earlierIssue,
    restated,
    findings,
    attachments,
    fmt: recordFormatter(visit, locale),
    released,
    recordSha256,
    ...('draftAt' in of ? { identity: undefined, issuedAt: of.draftAt } : { identity: of, issuedAt: of.issuedAt }),
  };
}
