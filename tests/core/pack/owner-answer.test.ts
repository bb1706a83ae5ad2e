import { describe, expect, test } from 'vitest';
import { releaseVisit } from '../../../worker/core/gate/release.ts';
import { packContext } from '../../../worker/core/pack/context.ts';
import { ownerSummaryView } from '../../../worker/core/pack/views/owner-summary.ts';
import { localeOf } from '../../../worker/core/text/locale.ts';
import { AT, assessed, attestation, posted } from './fixture.ts';

const IDENTITY = {
  pack: 'Q-SLM-P1-1',
  issue: '1',
  issuedAt: AT,
  visit: 'v',
  previous: undefined,
  supersedes: undefined,
  sealedBy: undefined,
};

/** What the owner reads of a record that its own person released. */
async function answerOf(record: Record<string, unknown>, language?: 'de'): Promise<unknown> {
  const assessment = await assessed(record);
  const { by } = record.release as { by: string };
  const outcome = releaseVisit(assessment, { ...attestation(assessment), by });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.findings));
  const locale = language && { locale: localeOf(language) };
  const { recordSha256 } = assessment;
  return ownerSummaryView(
    packContext(assessment, { of: IDENTITY, recordSha256, released: outcome.released, ...locale }),
  ).answer;
}

const released = (name: string, statement: string): Record<string, unknown> => {
  const record = posted(name);
  return { ...record, release: { ...(record.release as object), statement } };
};

describe('the answer to “May I fly?”', () => {
  test('of a weighing that was released alone speaks of the weighing and not of airworthiness', async () => {
    const record = posted('weighing-only');
    expect(record.release).toMatchObject({ statement: 'weighing-only' });
    expect(await answerOf(record)).toMatch(
      /^.+ \(.+\) released the weighing of Q-\w+, and nothing else\. This pack does not say whether the aircraft is airworthy\.$/,
    );
    expect(await answerOf(record, 'de')).toMatch(
      /^.+ hat die Wägung von Q-\w+ freigegeben und sonst nichts\. Diese Mappe sagt nicht, ob das Luftfahrzeug lufttüchtig ist\.$/,
    );
  });

  test('of an inspection with a statement of its own names it', async () => {
    const record = posted('nose-wheel-full');
    const aircraft = { ...(record.aircraft as object), regime: 'us-experimental' };
    const further = [{ statement: 'condition-inspection', scope: 'The 100-hour inspection.' }];
    expect(await answerOf({ ...record, aircraft, release: { ...(record.release as object), further } })).toMatch(
      /is released by .+ after its inspection \(Condition inspection\), within its limits and the limitations below\.$/,
    );
  });

  test('points to limitations only where there are any', async () => {
    const limited = await answerOf(released('nose-wheel-full', 'work-complete'));
    expect(limited).toMatch(/for the work described, within its limits and the limitations below\.$/);
    expect(await answerOf(released('weighing-only', 'work-complete'))).toMatch(
      /for the work described, within its limits\.$/,
    );
    const weighed = posted('weighing-only');
    const limitations = ['Day VFR only'];
    expect(await answerOf({ ...weighed, release: { ...(weighed.release as object), limitations } })).toMatch(
      /airworthy\. The limitations below apply\.$/,
    );
  });
});
