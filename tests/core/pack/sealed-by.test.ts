import { generateKeyPair } from 'jose';
import { expect, test } from 'vitest';
import { seal } from '../../../worker/core/core.ts';
import { AT, assessed, FILES, posted } from './fixture.ts';

const { privateKey } = await generateKeyPair('Ed25519');

test.each([
  ['\u65e5\u672c\u5de5\u623f', 'workshop-7 (workshop-7)'],
  ['Nord \u{1f6e9} Hangar', 'Nord Hangar (workshop-7)'],
])('seal() a workshop that was named %j releases, by what of the name can be printed', async (name, printed) => {
  const visit = await assessed(posted('weighing-only'), AT);
  const attestation = { by: 'rufus', knowsOfNoHazard: true, at: AT, read: visit.assessmentSha256 };
  const place = { pack: 'Q-WGT-P1-1', number: 1, issue: 1, visit: 'weighing', before: [] };
  const sealing = {
    workshop: { id: 'workshop-7', name },
    key: { kid: 'key', privateKey },
    by: { key: 'key-of-the-test', person: null },
  };
  const outcome = await seal(visit, attestation, place, FILES, sealing);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.findings));
  expect(outcome.sealed.documents.find(({ id }) => id === 'cover')?.html).toContain(printed);
});
