import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Assessed, type Attestation, assess, type PackPlace } from '../../../worker/core/core.ts';
import { FIXTURE_FILES } from '../../fixture-files.ts';

/** The files that the fixture visits show and append. */
export const { files: FILES } = FIXTURE_FILES;

/** The demo visit is releasable at this moment. */
export const AT = '2026-11-05T14:20:00+01:00';

export const PLACE: PackPlace = { pack: 'Q-SLM-P1-1', number: 1, issue: 1, visit: '2026-11', before: [] };

/** A posted visit of the fixtures, as JSON. */
export function posted(name: string): Record<string, unknown> {
  return JSON.parse(readFileSync(join(import.meta.dirname, '../../../fixtures/visits', `${name}.json`), 'utf8'));
}

/** A visit that fits the schema, assessed. */
export async function assessed(record: unknown, at = AT): Promise<Assessed> {
  const outcome = await assess(record, at, { attachments: FIXTURE_FILES.facts });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.issues, null, 1));
  return outcome.assessed;
}

/** What the inspector of the demo visit does. */
export function attestation({ assessmentSha256 }: Assessed, at = AT): Attestation {
  return { by: 'jonas', knowsOfNoHazard: true, at, read: assessmentSha256 };
}
