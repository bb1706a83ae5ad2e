import { describe, expect, test } from 'vitest';
import { assess, assessmentAnswer } from '../../../worker/core/core.ts';
import { AssessmentAnswer } from '../../../worker/edge/http/schemas.ts';
import { RELEASABLE_AT } from '../../core/gate/assess-record.ts';
import { FIXTURE_FILES } from '../../fixture-files.ts';
import { fixturesIn, readFixture } from '../../read-fixture.ts';

const KNOWN = { attachments: FIXTURE_FILES.facts };

const ALL = Object.keys(AssessmentAnswer.shape.results.shape);
/** Topics that only some classes of aircraft have. */
const OF_A_CLASS = ['lateral', 'hang', 'energy'];

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

  test('says every code in English, whatever the language of the record', async () => {
    const answered = async (language: string) => {
      const record = readFixture('visits/nose-wheel-full') as { workshop: object };
      const posted = { ...record, workshop: { ...record.workshop, language } };
      const outcome = await assess(posted, RELEASABLE_AT['nose-wheel-full'] ?? '', KNOWN);
      if (!outcome.ok) throw new Error(JSON.stringify(outcome.issues));
      return assessmentAnswer(outcome.assessed).results;
    };
    const results = await answered('de');
    expect(results).toEqual(await answered('en'));
    expect(results.weighing?.budget[0]).toMatchObject({
      source: 'Scale S1, error limit of its certificate',
      component: { kind: 'scale-error-limit', scale: 'S1' },
    });
    expect(results.schedule?.history.at(-1)).toMatchObject({ reason: 'Weighed', cause: { kind: 'weighed' } });
    expect(results.electrical?.endurance?.stretches.map(({ use, name }) => [use, name])).toEqual([
      ['before-shedding', 'Until loads are shed'],
      ['after-shedding', 'Loads left on'],
      ['landing', 'Approach and landing'],
    ]);
    expect(results.surveillance?.altimeters[0]?.figures[0]).toMatchObject({
      name: 'Scale error',
      figure: 'scale-error',
    });
    expect(results.surveillance?.modeS.every(({ name, check }) => name !== check)).toBe(true);
  });

  test.each([
    ['nose-wheel-full', ALL.filter((topic) => !OF_A_CLASS.includes(topic))],
    ['helicopter', ['lateral', 'configurations']],
    ['weight-shift-hung', ['hang']],
    ['electric-aeroplane', ['energy', 'electrical']],
  ])('answers every topic of %s', async (name, topics) => {
    const outcome = await assess(readFixture(`visits/${name}`), RELEASABLE_AT[name] ?? '', KNOWN);
    if (!outcome.ok) throw new Error(JSON.stringify(outcome.issues));
    const { results } = assessmentAnswer(outcome.assessed);
    for (const topic of topics) expect(results, topic).toHaveProperty(topic, expect.anything());
  });
});
