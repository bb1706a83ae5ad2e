import { draftPdf, seal } from '../../../worker/core/core.ts';
import type { PaperSize } from '../../../worker/core/units/paper-size.ts';
import { RELEASABLE_AT } from '../gate/assess-record.ts';
import { assessed, FILES, posted } from './fixture.ts';

interface Posted {
  workshop: { paper?: PaperSize };
  release: { by: string };
}

function postedOn(name: string, paper: PaperSize | undefined): Posted {
  const record = posted(name) as unknown as Posted;
  if (paper) record.workshop.paper = paper;
  return record;
}

/** The sealed pack of a visit of `fixtures/visits/`, at the moment at which it can be released. */
export async function sealedFixture(name: string, paper?: PaperSize): Promise<Uint8Array> {
  const record = postedOn(name, paper);
  const at = RELEASABLE_AT[name] ?? '';
  const visit = await assessed(record, at);
  const place = { pack: 'REFERENCE-P1-1', number: 1, issue: 1, visit: name, before: [] };
  const attestation = { by: record.release.by, knowsOfNoHazard: true, at, read: visit.assessmentSha256 };
  const outcome = await seal(visit, attestation, place, FILES);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.findings, null, 1));
  return outcome.sealed.pdf;
}

/** The same visit before its release, marked on every page. */
export async function draftFixture(name: string, paper?: PaperSize): Promise<Uint8Array> {
  const at = RELEASABLE_AT[name] ?? '';
  return (await draftPdf(await assessed(postedOn(name, paper), at), at, { files: FILES })).bytes;
}
