import { describe, expect, test } from 'vitest';
import { AssessmentAnswer } from '../../worker/http/schemas.ts';
import { assess, assessmentAnswer } from '../../worker/pipeline.ts';
import { FIXTURE_FILES } from '../fixture-files.ts';
import { RELEASABLE_AT } from '../gate/assess-record.ts';
import { fixturesIn, readFixture } from '../read-fixture.ts';

const KNOWN = { attachments: FIXTURE_FILES.facts };

describe('assessmentAnswer()', () => {
  test.each(fixturesIn('visits'))(
    'answers %s as the interface description says, and nothing beyond it',
    async (name) => {
      const outcome = await assess(readFixture(`visits/${name}`), RELEASABLE_AT[name] ?? '', KNOWN);
      if (!outcome.ok) throw new Error(JSON.stringify(outcome.issues));
      const sent: unknown = JSON.parse(JSON.stringify(assessmentAnswer(outcome.assessed)));
      // Parsing drops what the description does not name: what is left must be all that was sent.
      expect(AssessmentAnswer.parse(sent)).toEqual(sent);
    },
  );

  test('answers every topic of a visit that has them all', async () => {
    const outcome = await assess(readFixture('visits/nose-wheel-full'), RELEASABLE_AT['nose-wheel-full'] ?? '', KNOWN);
    if (!outcome.ok) throw new Error(JSON.stringify(outcome.issues));
    const { results } = assessmentAnswer(outcome.assessed) as { results: object };
    for (const topic of Object.keys(AssessmentAnswer.shape.results.shape))
      expect(results, topic).toHaveProperty(topic, expect.anything());
  });
});
