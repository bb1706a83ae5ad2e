import type { Assessment } from '../gate/gate.ts';
import type { ReleasedVisit } from '../gate/release.ts';
import type { Printer } from '../units/print.ts';
import { recordPrinter } from '../visit/record-printer.ts';
import type { Lexicon } from '../words/lexicon.ts';
import type { PackIdentity } from './identity.ts';

/** All that a view may look at. */
export interface PackContext extends Pick<Assessment, 'visit' | 'results' | 'regime' | 'findings' | 'attachments'> {
  identity: PackIdentity;
  /** Present only when the gate released the visit. */
  released: ReleasedVisit | undefined;
  /** SHA-256 of the record in canonical JSON, in hex. */
  recordSha256: string;
  say: Printer;
}

export function packContext(
  assessment: Assessment,
  {
    lexicon,
    ...options
  }: {
    identity: PackIdentity;
    recordSha256: string;
    released?: ReleasedVisit;
    /** @default that of the record */
    lexicon?: Lexicon;
  },
): PackContext {
  const { visit, results, regime, findings, attachments } = assessment;
  return {
    visit,
    results,
    regime,
    findings,
    attachments,
    say: recordPrinter(visit, lexicon),
    released: undefined,
    ...options,
  };
}
